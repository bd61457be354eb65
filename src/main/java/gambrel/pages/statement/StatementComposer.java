package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
import gambrel.pages.views.PageView;
import gambrel.pages.views.ShopView;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Composes the view of a customer's statement. */
public final class StatementComposer {

  private StatementComposer() {}

  /**
   * The view of one statement.
   *
   * @param planned the customer, the body and the revision
   * @param changes the figures that differ from the replaced statement; empty if unknown
   * @param draft whether the statement is held
   * @param wording the customer's words
   */
  public static StatementView compose(
      Night night,
      Planned planned,
      Optional<List<Figures.Change>> changes,
      boolean draft,
      Wording wording) {
    String customer = planned.customer();
    var own = planned.account().entitlements().get(customer);
    var subject = new StatementContext(night, planned.account(), customer, own, wording);
    return new StatementView(
        page(subject, draft),
        wording.words().labels(),
        shop(subject.settings()),
        issue(subject, planned, draft),
        name(subject),
        AnimalPart.heading(subject),
        AnimalPart.facts(subject),
        subject.isOutrightOnly() ? "" : subject.body().note(),
        draft ? Optional.of(DraftPart.of(subject, planned)) : Optional.empty(),
        draft ? Optional.empty() : ChangesPart.of(subject, planned, changes),
        answers(subject),
        FlowPart.of(subject),
        SharesPart.of(subject),
        BoxesPart.of(subject),
        pending(subject),
        ChargesPart.of(subject),
        KeepingPart.of(subject),
        KeepingPart.cautions(subject));
  }

  /** The answers to customers' questions, in the order of the page. */
  private static List<Answer> answers(StatementContext subject) {
    boolean condemned = subject.is(Outcome.CONDEMNED);
    boolean owner = !subject.isOutrightOnly();
    var answers = new ArrayList<>(List.of(PacksAnswer.of(subject), OweAnswer.of(subject)));
    if (owner && !condemned) {
      WhyAnswer.of(subject).ifPresent(answers::add);
      NormalAnswer.of(subject).ifPresent(answers::add);
    }
    if (!condemned) {
      MineAnswer.of(subject).ifPresent(answers::add);
    }
    if (owner) {
      RestFacts.of(subject).ifPresent(answers::add);
    }
    return answers;
  }

  /** The open batches with their due dates. The last one says that a revision follows. */
  private static List<Fact> pending(StatementContext subject) {
    var facts = new ArrayList<Fact>();
    var open = subject.openBatches();
    for (var batch : open) {
      boolean last = facts.size() + 1 == open.size();
      String revision = last ? ' ' + subject.wording().say("pending.revision") : "";
      facts.add(new Fact(batch.name(), pending(subject, batch) + revision));
    }
    return facts;
  }

  private static String pending(StatementContext subject, BatchMeat meat) {
    var wording = subject.wording();
    var batch = meat.batch().batch();
    var tubs =
        subject.balance().weighings().of(Step.TUB).stream()
            .filter(tub -> tub.batch().equals(batch.id()))
            .toList();
    String owner = subject.isSharer() ? "pending.batch.share" : "pending.batch";
    String when =
        batch
            .due()
            .filter(day -> !meat.batch().late())
            .map(day -> wording.say("pending.due", subject.formats().date(day)))
            .orElseGet(() -> wording.say("pending.late"));
    return wording.say(owner, subject.total(tubs)) + ' ' + when;
  }

  private static String name(StatementContext subject) {
    return subject.night().shop().customer(subject.customer()).name();
  }

  private static PageView page(StatementContext subject, boolean draft) {
    var wording = subject.wording();
    var settings = subject.settings();
    String body = subject.body().id();
    String foot =
        settings.contact().isEmpty()
            ? settings.name()
            : wording.say("statement.foot", settings.name(), oneLine(settings.contact()));
    return new PageView(
        wording.language(),
        settings.paper() == Settings.Paper.LETTER,
        wording.say("statement.title", body, name(subject)),
        wording.say("statement.running", settings.name(), AnimalPart.heading(subject), body),
        draft ? wording.say("statement.draft.foot", foot) : foot);
  }

  /** The shop's name and address lines, as every page prints them. */
  public static ShopView shop(Settings settings) {
    var lines = new ArrayList<String>();
    for (var text : List.of(settings.address(), settings.contact())) {
      if (!text.isEmpty()) {
        lines.add(oneLine(text));
      }
    }
    return new ShopView(settings.name(), lines);
  }

  private static String oneLine(String lines) {
    return lines.replaceAll("\\s*[;\\n]\\s*", ", ");
  }

  private static List<String> issue(StatementContext subject, Planned planned, boolean draft) {
    var wording = subject.wording();
    if (draft) {
      return List.of(wording.say("statement.draft.issue"));
    }
    var date = subject.night().asOf().toLocalDate();
    return List.of(
        wording.say("statement.issued", subject.formats().date(date)),
        wording.say("statement.revision", subject.formats().count(planned.revision())));
  }
}
