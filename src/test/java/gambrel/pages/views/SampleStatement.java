package gambrel.pages.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a sample statement together; whatever is not set stays empty. */
final class SampleStatement {

  static final ShopView SHOP =
      new ShopView(
          "Windrow Lane Boning Room",
          List.of("3 Windrow Lane, Marlow Flat"),
          List.of(Link.of("5550 0142"), Link.of("kitchen@windrow.example")));

  private static final String FOOT = SHOP.name() + " · 5550 0142";

  final Words words;
  final List<String> issue = new ArrayList<>();
  final List<Fact> animal = new ArrayList<>();
  final List<Answer> answers = new ArrayList<>();
  final List<Fact> pending = new ArrayList<>();
  final List<String> cautions = new ArrayList<>();
  private final String body;
  private final String heading;
  private final String customer;
  boolean letter;
  String note = "";
  String address = "";
  String kind;
  StatementView.Draft draft;
  TextTable changes;
  FlowView flow;
  CutsView boxes;
  ChargesView charges;
  TextTable keeping;

  SampleStatement(Words words, String body, String heading, String customer) {
    this.words = words;
    this.body = body;
    this.heading = heading;
    this.customer = customer;
    kind = words.say("statement.kind");
  }

  /** Mark, kill date and number. */
  SampleStatement known(String mark, String killed) {
    animal.add(new Fact(words.say("animal.mark"), mark));
    animal.add(new Fact(words.say("animal.killed"), killed));
    animal.add(new Fact(words.say("animal.number"), body));
    return this;
  }

  SampleStatement issued(String date, int revision) {
    issue.add(words.say("statement.issued", date));
    issue.add(words.say("statement.revision", Integer.toString(revision)));
    return this;
  }

  SampleStatement answer(String key, String lead, String... lines) {
    return answerTo(key + ".question", key, lead, lines);
  }

  SampleStatement answerTo(String question, String key, String lead, String... lines) {
    answers.add(new Answer(key, words.say(question), lead, List.of(lines)));
    return this;
  }

  SampleStatement keeping(String fridge, String freezer, String... kinds) {
    var rows = new ArrayList<List<String>>();
    for (var kind : kinds) {
      rows.add(SampleKeeping.row(words, kind, letter));
    }
    keeping =
        new TextTable(
            "",
            List.of(
                "",
                words.say("keeping.fridge", fridge),
                words.say("keeping.freezer", freezer),
                words.say("keeping.cook")),
            rows,
            "");
    cautions.add(words.say(letter ? "keeping.source.us" : "keeping.source.au"));
    return this;
  }

  SampleStatement caution(String... keys) {
    for (var key : keys) {
      cautions.add(words.say(key));
    }
    return this;
  }

  StatementView view() {
    return new StatementView(
        new PageView(
            letter ? "en-US" : "en-AU",
            letter,
            words.say("statement.title", body, customer),
            words.say("statement.running", SHOP.name(), heading, body),
            draft == null ? FOOT : words.say("statement.draft.foot", FOOT)),
        words.labels(),
        SHOP,
        kind,
        issue,
        customer,
        address,
        heading,
        animal,
        note,
        Optional.ofNullable(draft),
        Optional.ofNullable(changes),
        answers,
        Optional.ofNullable(flow),
        Optional.ofNullable(boxes),
        pending,
        Optional.ofNullable(charges),
        Optional.ofNullable(keeping),
        cautions);
  }
}
