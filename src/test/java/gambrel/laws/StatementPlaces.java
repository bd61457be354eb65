package gambrel.laws;

import gambrel.oracle.ExactNight;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** The figures on a statement or draft: its attachment, its picture, its sentences, its boxes. */
final class StatementPlaces {
  /** Sentences by the key of their words, with the figure in each place; {@code -} is none. */
  private static final Map<String, List<String>> OF_THE_BODY =
      Map.ofEntries(
          Map.entry("why.lead", List.of("live", "take_home")),
          Map.entry("why.lead.hot", List.of("hot", "take_home")),
          Map.entry("why.lead.cold", List.of("cold", "take_home")),
          Map.entry("why.lead.block", List.of("boning", "take_home")),
          Map.entry("why.lead.whole", List.of("live", "take_home")),
          Map.entry("why.lead.whole.hot", List.of("hot", "take_home")),
          Map.entry("why.pending", List.of("put_into_open_batches")),
          Map.entry("why.of_cold", List.of("take_home_of_cold_pct", "cold")),
          Map.entry("why.of_hot", List.of("take_home_of_hot_pct", "hot")),
          Map.entry("normal.dressing", List.of("dressing_pct")),
          Map.entry("normal.chill", List.of("chill_shrink_pct")),
          Map.entry("normal.bench", List.of("cutting_loss_pct")),
          Map.entry("normal.take_home", List.of("take_home_of_cold_pct")),
          Map.entry("normal.take_home_of_hot", List.of("take_home_of_hot_pct")),
          Map.entry("flow.trim", List.of("rail_trim")),
          Map.entry("draft.reason.loss-high", List.of("cutting_loss")));

  private static final Map<String, List<String>> OF_THE_CUSTOMER =
      Map.of(
          "packs.lead.all.one", List.of("-", "boxes"),
          "packs.lead.all.many", List.of("-", "boxes"),
          "packs.lead.some.one", List.of("-", "boxes"),
          "packs.lead.some.many", List.of("-", "boxes"),
          "packs.offal", List.of("offal"),
          "packs.whole.lead", List.of("take_home"));

  /** Items are rounded, then added up: what that adds to the take-home, the loss lacks. */
  private static final List<String> OF_ALL_ITEMS =
      List.of("home", "bench", "bench.partly", "unweighed");

  private final ExactNight exact;
  private final EnglishWords words;
  private final Agreement agreement;

  StatementPlaces(ExactNight exact, EnglishWords words, Agreement agreement) {
    this.exact = exact;
    this.words = words;
    this.agreement = agreement;
  }

  void compare(String name, PrintedPage page, String customer, String body) {
    var own = exact.customer(body, customer);
    var whole = exact.body(body);
    attached(name + " attachment ", page.figures(), own, body);
    if (own.containsKey("share")) {
      picture(name + " picture ", page, body);
      rest(name + " rest ", page, whole);
    }
    int items = page.rows("figures").size();
    for (var sentence : page.sentences()) {
      words
          .read("rest.offal.packed", sentence)
          .map(said -> said.get(0).replaceFirst("^.*: ", ""))
          .ifPresent(said -> agreement.part(name + " offal", said, whole.get("offal"), items));
      OF_THE_BODY.forEach((key, figures) -> sentence(name, key, sentence, figures, whole));
      OF_THE_CUSTOMER.forEach((key, figures) -> sentence(name, key, sentence, figures, own));
    }
    boxes(name + " boxes ", page, own);
  }

  private void attached(
      String place, Map<String, String> attached, Map<String, BigFraction> own, String body) {
    var whole = exact.body(body);
    attached.forEach(
        (name, value) -> {
          var kind = name.replaceFirst(":.*", "");
          if (kind.equals("body") && !name.equals("body:head")) {
            agreement.number(place + name, value, whole.get(name.substring(5)));
          } else if (kind.equals("batch_bodies")) {
            var count = exact.batchBodies(body).get(name.substring(13));
            agreement.same(place + name, "" + count, value);
          } else if (own.containsKey(name) && !name.equals("share")) {
            agreement.number(place + name, value, own.get(name));
          }
        });
    own.keySet().stream()
        .filter(name -> name.contains(":"))
        .forEach(name -> agreement.same(place + name, true, attached.containsKey(name)));
    if (own.containsKey("share")) {
      for (var name : DataPlaces.COLUMNS) {
        if (!name.equals("hours_chilled")) {
          boolean known = attached.containsKey("body:" + name);
          agreement.same(place + name + " is known", whole.containsKey(name), known);
        }
      }
    }
  }

  private void picture(String place, PrintedPage page, String body) {
    var lines = exact.picture(body);
    var rows = page.rows("flow");
    if (rows.isEmpty() && !page.sentences().toString().contains("became")) {
      return;
    }
    agreement.same(
        place + "lines",
        lines.stream().map(ExactNight.Line::label).toList(),
        rows.stream().map(row -> label(row.cell(0))).toList());
    for (int i = 0; i < Math.min(lines.size(), rows.size()); i++) {
      var line = lines.get(i);
      var row = rows.get(i);
      int items = OF_ALL_ITEMS.contains(line.label()) ? page.rows("figures").size() : 0;
      agreement.part(place + line.label(), row.cell(2), line.weight(), items);
      agreement.number(place + line.label() + " share", row.cell(3), line.percent());
    }
  }

  /** The label of a line by its words. */
  private String label(String printed) {
    for (var label :
        List.of(
            "live",
            "dressing",
            "hot",
            "chill",
            "cold",
            "ageing",
            "trimmed",
            "boning",
            "home",
            "pending",
            "bone",
            "fat",
            "waste",
            "unweighed",
            "bench",
            "bench.partly",
            "batch")) {
      if (words.say("flow." + label).equals(printed)) {
        return label;
      }
    }
    return printed;
  }

  private void sentence(
      String place,
      String key,
      String sentence,
      List<String> figures,
      Map<String, BigFraction> numbers) {
    var said = words.read(key, sentence);
    for (int i = 0; said.isPresent() && i < figures.size(); i++) {
      if (!figures.get(i).equals("-")) {
        var text = said.get().get(i).replaceFirst("^.*: ", "");
        agreement.number(place + " " + key + " {" + i + "}", text, numbers.get(figures.get(i)));
      }
    }
  }

  /** What was packed of a kind, and what was not taken home. */
  private void rest(String place, PrintedPage page, Map<String, BigFraction> whole) {
    var lead = words.say("rest.bins").split("\\{0}")[0];
    for (var sentence : page.sentences()) {
      int from = sentence.indexOf(lead) + lead.length();
      var said = sentence.contains(lead) ? sentence.substring(from).split("[.;] ")[0] : "";
      for (var part : said.split(" · ")) {
        String kind = part.split(" ")[0];
        if (List.of("bone", "fat", "waste").contains(kind)) {
          rest(place + kind, part, whole.get(kind + "_packed"), whole.get(kind + "_binned"));
        }
      }
    }
  }

  private void rest(String place, String text, BigFraction packed, BigFraction binned) {
    for (var piece : text.split(", ")) {
      words
          .read("rest.packed", piece)
          .ifPresent(said -> agreement.number(place + " packed", said.get(0), packed));
      words
          .read("rest.left", piece)
          .ifPresent(said -> agreement.number(place + " left", said.get(0), binned));
    }
  }

  /** The boxes' total is what a scale shows. */
  private void boxes(String place, PrintedPage page, Map<String, BigFraction> own) {
    for (var row : page.rows("figures")) {
      if (row.style().equals("total")) {
        agreement.number(place + "total", row.cell(row.cells().size() - 1), own.get("boxes"));
      }
    }
  }
}
