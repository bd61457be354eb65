package gambrel.pages.statement;

import gambrel.insight.usual.Comparison;
import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
import gambrel.pages.views.Link;
import gambrel.pages.views.PageView;
import gambrel.pages.views.ShopView;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.Reason;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Composes the view of a customer's statement. */
public final class StatementComposer extends StatementPart {
  private final Customer customer;
  private final Optional<Comparison> comparison;

  private StatementComposer(
      Night night, Planned planned, Optional<Comparison> comparison, Wording wording) {
    super(night, planned, wording);
    this.comparison = comparison;
    this.customer = night.shop().customer(planned.customer());
  }

  /**
   * The view of one statement; of a draft if the body is held.
   *
   * @param planned the customer, the body and the revision
   * @param comparison with like bodies of the shop; empty if there are too few
   * @param changes the figures that differ from the replaced statement; empty if unknown
   * @param wording the customer's words
   */
  public static StatementView compose(
      Night night,
      Planned planned,
      Optional<Comparison> comparison,
      Optional<List<Figures.Change>> changes,
      Wording wording) {
    return new StatementComposer(night, planned, comparison, wording).view(changes);
  }

  private StatementView view(Optional<List<Figures.Change>> changes) {
    var boxes = new BoxesPart(this);
    var charges = new ChargesPart(this);
    var keeping = new KeepingPart(this);
    var flow = new FlowPart(this).chart();
    String invoice = charges.title();
    return new StatementView(
        page(),
        wording.words().labels(),
        letterhead(),
        say(invoice),
        issue(),
        customer.name(),
        invoice.equals("statement.kind") ? "" : oneLine(customer.address()),
        heading(),
        animal(),
        own.isOutrightOnly() ? "" : body.note(),
        held
            ? Optional.of(new StatementView.Draft(say("draft.sentence"), reasons()))
            : Optional.empty(),
        held ? Optional.empty() : new ChangesPart(this).table(changes),
        answers(charges.owed(), flow.isPresent()),
        flow,
        boxes.boxes(),
        pending(),
        charges.table(),
        keeping.table(),
        keeping.cautions());
  }

  /**
   * The answers to customers' questions, in the order of the page.
   *
   * @param drawn whether the picture shows where the rest is
   */
  private List<Answer> answers(Answer owed, boolean drawn) {
    boolean condemned = is(Outcome.CONDEMNED);
    boolean owner = !own.isOutrightOnly();
    var boxes = new BoxAnswers(this);
    var answers = new ArrayList<>(List.of(boxes.packs(), owed));
    if (owner && !condemned && !held) {
      new LossAnswers(this).why().ifPresent(answers::add);
      answers.add(new NormalAnswer(this, comparison).answer());
    }
    if (!condemned) {
      boxes.mine().ifPresent(answers::add);
    }
    if (owner && !drawn) {
      new RestAnswer(this).answer().ifPresent(answers::add);
    }
    return answers;
  }

  /** The open batches with their due dates. Issued, the last one says that a revision follows. */
  private List<Fact> pending() {
    var facts = new ArrayList<Fact>();
    openBatches().forEach(batch -> facts.add(batch.pending()));
    if (!facts.isEmpty() && !held) {
      var last = facts.remove(facts.size() - 1);
      facts.add(new Fact(last.label(), last.text() + ' ' + say("pending.revision")));
    }
    return facts;
  }

  /** The heading, which answers "Is this my animal?" together with the facts below it. */
  private String heading() {
    String id = body.species().id();
    String species = say("species." + id);
    String category = wording.category(body);
    boolean named = !category.isEmpty() && !category.equalsIgnoreCase(species);
    String kind = named ? say("animal.heading." + id, category) : species;
    return isMob() ? say("animal.mob", kind, formats.count(body.head())) : kind;
  }

  /**
   * Facts about the animal. Only owners of a share see its mark, since a mark may name its owner.
   */
  private List<Fact> animal() {
    boolean owner = !own.isOutrightOnly();
    var mark = Optional.of(body.mark()).filter(text -> owner && !text.isEmpty());
    var hung = balance.daysHung().filter(days -> owner && days > 0);
    var share = Optional.of(share()).filter(text -> isSharer());
    return Stream.of(
            mark.map(text -> fact("animal.mark", text)),
            body.killed().map(day -> fact("animal.killed", formats.date(day))),
            Optional.of(fact("animal.number", body.id())),
            hung.map(days -> fact("animal.hung", wording.counted("animal.hung.days", days))),
            share.map(text -> fact("animal.share", text)))
        .flatMap(Optional::stream)
        .toList();
  }

  private PageView page() {
    String foot =
        settings.contact().isEmpty()
            ? settings.name()
            : say("statement.foot", settings.name(), oneLine(settings.contact()));
    return new PageView(
        wording.language(),
        settings.paper() == Settings.Paper.LETTER,
        say("statement.title", body.id(), customer.name()),
        say("statement.running", settings.name(), heading(), body.id()),
        held ? say("statement.draft.foot", foot) : foot);
  }

  /** The shop's name, address with its {@code numbers}, and contact. */
  static ShopView shop(Settings settings, String... numbers) {
    var lines =
        Stream.concat(Stream.of(oneLine(settings.address())), Stream.of(numbers))
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" · "));
    var contact = Stream.of(settings.contact().split("[;\\n]")).filter(text -> !text.isBlank());
    return new ShopView(
        settings.name(),
        lines.isEmpty() ? List.of() : List.of(lines),
        contact.map(Link::of).toList());
  }

  /** The shop with its tax number. */
  private ShopView letterhead() {
    var terms = settings.terms();
    if (terms.taxNumber().isEmpty()) {
      return shop(settings);
    }
    boolean named = !terms.taxNumberName().isEmpty();
    String label = named ? terms.taxNumberName() : say("pay.tax_number");
    return shop(settings, say("statement.tax_number", label, terms.taxNumber()));
  }

  private List<String> issue() {
    if (held) {
      return List.of(say("statement.draft.issue"));
    }
    var issued = say("statement.issued", formats.date(night.asOf().toLocalDate()));
    String revision = say("statement.revision", formats.count(planned.revision()));
    return List.of(
        issued,
        planned
            .number()
            .map(number -> say("statement.number", String.valueOf(number), revision))
            .orElse(revision));
  }

  /** The reasons why a statement is held, each as a sentence, and the statement that stands. */
  private List<String> reasons() {
    var stands =
        planned
            .replaces()
            .map(
                row ->
                    say(
                        "draft.stands",
                        formats.count(row.revision()),
                        formats.date(row.issued().toLocalDate())));
    var reasons = account.decision().reasons().stream().map(this::words).distinct();
    return Stream.concat(reasons, stands.stream()).toList();
  }

  private String words(Reason reason) {
    String key = "draft.reason." + reason.code().id();
    return switch (reason.code()) {
      case RAIL_MISSING -> say(key, say("draft.rail." + reason.name()));
      case LOSS_NEGATIVE -> say(key, weight(reason, "surplus"), weight(reason, "uncertainty"));
      case LOSS_HIGH ->
          say(key, weight(reason, "loss"), weight(reason, "limit"), weight(reason, "uncertainty"));
      case HOME_LOW -> say(key, weight(reason, "home"), weight(reason, "boning"));
      case BATCH_OUT, BATCH_LATE, BATCH_OPEN -> say(key, batchName(reason.name()));
      case CHARGE_UNKNOWN -> say(key, charge(reason));
      case PARTS_MISSING, RAIL_TWICE, ROW_UNREAD, ROW_SET_ASIDE, SHARES, SCALE_FAILED, PART_CUT ->
          say(key);
    };
  }

  private String weight(Reason reason, String name) {
    int decimals = Math.max(decimals(weighings.out()), decimals(balance.boningWeighings()));
    return formats.fitting(reason.weight(name), decimals);
  }

  private static String charge(Reason reason) {
    String description = reason.text("description");
    return description.isEmpty() ? reason.name() : description;
  }
}
