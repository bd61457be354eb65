package gambrel.pages.owner.month;

import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.pages.owner.HeldPart;
import gambrel.pages.owner.ShopPart;
import gambrel.pages.views.PartView;
import gambrel.pages.views.SummaryView;
import gambrel.pages.words.Wording;
import java.util.List;
import java.util.stream.Stream;

/** Puts together the owner's month from its parts. */
public final class SummaryComposer {
  private SummaryComposer() {}

  /**
   * The summary of a month. Its text depends on the bodies of the month and of the twelve before
   * it, on values and on payments, not on the moment at which it is made.
   */
  public static SummaryView compose(MonthReport report, Wording wording) {
    var page = MonthPart.Page.of(report, wording);
    var records = report.records();
    var shop = new ShopPart(records.settings(), wording);
    var accounts = records.bodies().bodies().stream().map(MonthBody::account).toList();
    String name = wording.formats().month(records.month());
    return new SummaryView(
        shop.page(
            wording.say("summary.title", name),
            wording.say("summary.running", records.settings().name(), name)),
        wording.words().labels(),
        shop.shop(),
        wording.formats().opening(name),
        known(records, wording),
        new FirstPart(page).view(),
        new StoryPart(page).sentences(),
        new HeldPart(records.night(), LikelyCauses.NONE, wording).of(HeldPart.among(accounts)),
        parts(page));
  }

  /** How many findings of a month stand on the first page of its summary. */
  public static int findingsOnFirstPage(MonthReport report, Wording wording) {
    return new FirstPart(MonthPart.Page.of(report, wording)).fitting().size();
  }

  private static List<PartView> parts(MonthPart.Page page) {
    var losses = new LossPart(page);
    var hanging = new HangingPart(page);
    var yields = new YieldsPart(page);
    var money = new MoneyPart(page);
    var bodies = new BodiesPart(page);
    var totals = new TotalsPart(page);
    var unpaid = totals.unpaid();
    return Stream.of(
            losses.lost(),
            losses.chiller(),
            new AgainstPart(page).part(),
            hanging.hanging(),
            hanging.furtherDay(),
            losses.known(),
            bodies.batches(),
            yields.byOwner(),
            yields.beforeAndNow(),
            yields.primals(),
            new PacePart(page).part(),
            new ValuePart(page).part(),
            money.income(),
            money.stock(),
            unpaid,
            totals.totals(unpaid),
            new YearPart(page).part(),
            bodies.bodies())
        .filter(part -> !part.isEmpty())
        .toList();
  }

  /** The time of the last weighing that the summary knows; empty without weighings. */
  private static String known(MonthRecords records, Wording wording) {
    return records
        .bodies()
        .lastWeighing()
        .map(time -> wording.formats().moment(time.toLocalDateTime()))
        .map(moment -> wording.say("summary.known", moment))
        .orElse("");
  }
}
