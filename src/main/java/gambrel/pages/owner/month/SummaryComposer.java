package gambrel.pages.owner.month;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.pages.owner.HeldPart;
import gambrel.pages.owner.ShopPart;
import gambrel.pages.views.PartView;
import gambrel.pages.views.SummaryView;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import java.time.YearMonth;
import java.util.List;

/** Puts together the owner's month from its parts. */
public final class SummaryComposer {
  private SummaryComposer() {}

  /**
   * The summary of a month. Its text depends on the bodies of the month and of the twelve before
   * it, on values and on payments, not on the moment at which it is made.
   *
   * @param register every statement, tonight's too
   */
  public static SummaryView compose(
      Night night, Register register, YearMonth yearMonth, Wording wording) {
    return compose(MonthReport.of(MonthRecords.of(night, register, yearMonth)), wording);
  }

  /** The summary of a month whose report is there already. */
  public static SummaryView compose(MonthReport report, Wording wording) {
    var page = MonthPage.of(report, wording);
    var records = report.records();
    var month = records.bodies();
    var shop = new ShopPart(records.settings(), wording);
    var held = month.bodies().stream().map(MonthBody::account).toList();
    String name = wording.formats().month(month.month());
    return new SummaryView(
        shop.page(
            wording.say("summary.title", name),
            wording.say("summary.running", records.settings().name(), name)),
        wording.words().labels(),
        shop.shop(),
        wording.formats().opening(name),
        known(month, wording),
        new FirstPart(page).page(),
        new StoryPart(page).sentences(),
        new HeldPart(records.night(), wording).of(HeldPart.among(held)),
        parts(page));
  }

  private static List<PartView> parts(MonthPage page) {
    var losses = new LossPart(page);
    var hanging = new HangingPart(page);
    var yields = new YieldsPart(page);
    var money = new MoneyPart(page);
    var unpaid = new UnpaidPart(page).part();
    return List.of(
        losses.lost(),
        losses.chiller(),
        new AgainstPart(page).part(),
        hanging.hanging(),
        hanging.furtherDay(),
        losses.known(),
        new BatchPart(page).part(),
        yields.byOwner(),
        yields.beforeAndNow(),
        yields.primals(),
        new PacePart(page).part(),
        new ValuePart(page).part(),
        money.income(),
        money.stock(),
        unpaid,
        new TotalsPart(page).part(!unpaid.isEmpty()),
        new YearPart(page).part(),
        new BodiesPart(page).part());
  }

  private static String known(MonthBodies month, Wording wording) {
    var formats = wording.formats();
    return month
        .lastWeighing()
        .map(
            time ->
                wording.say(
                    "summary.known",
                    formats.date(time.toLocalDate()) + ", " + formats.time(time.toLocalTime())))
        .orElse("");
  }
}
