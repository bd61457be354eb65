package gambrel.ownerpages;

import gambrel.balance.BodyBalance;
import gambrel.month.MonthBodies;
import gambrel.month.MonthRecords;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import gambrel.statement.MoneyChapter;
import gambrel.statement.SummaryView;
import gambrel.wording.Wording;
import java.time.YearMonth;
import java.util.List;

/** Puts together the owner's month from its parts. */
public final class SummaryComposer {
  private SummaryComposer() {}

  /**
   * The summary of a month. Its text depends on the bodies of the month and of the twelve before it,
   * on values and on payments, not on the moment at which it is made.
   *
   * @param register every statement, tonight's too
   */
  public static SummaryView compose(
      Night night, Register register, YearMonth yearMonth, Wording wording) {
    return compose(MonthRecords.of(night, register, yearMonth), wording);
  }

  /** The same from records that are there already. */
  public static SummaryView compose(MonthRecords records, Wording wording) {
    var night = records.night();
    var month = records.bodies();
    var settings = night.shop().settings();
    var places = Places.of(balances(month), wording.formats(), settings.unit());
    var shop = new ShopPart(settings, wording);
    var groups = new GroupsPart(month, wording, places);
    var money = new MoneyPart(month, records.register(), wording);
    var list = new BodiesPart(month, wording, places);
    String name = wording.formats().month(month.month());
    return new SummaryView(
        shop.page(
            wording.say("summary.title", name),
            wording.say("summary.running", settings.name(), name)),
        wording.words().labels(),
        shop.shop(),
        wording.formats().opening(name),
        known(month, wording),
        new FirstPart(records, wording, places).page(),
        new StoryPart(month, wording, places).sentences(),
        new HeldPart(night, wording).of(HeldPart.among(month.bodies())),
        groups.shrink(),
        ShrinkChapterPart.chapter(records, wording, places),
        new ChartPart(records, wording).charts(),
        new YieldsPart(records, wording).chapter(groups.yields()),
        new PacePart(records, wording).chapter(),
        new ValuePart(records, wording).chapter(),
        new BatchPart(month, wording).rows(),
        money(records, new TotalsPart(month, wording, places), money, wording),
        new YearPart(records, wording, places).chapter(),
        list.rows(),
        list.more(),
        settings.unit().id(),
        settings.currency().getCurrencyCode());
  }

  private static List<BodyBalance> balances(MonthBodies month) {
    return month.bodies().stream().map(account -> account.balance()).toList();
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

  private static MoneyChapter money(
      MonthRecords records, TotalsPart weights, MoneyPart money, Wording wording) {
    var income = new IncomePart(records, wording);
    var stock = new StockPart(records, wording);
    return new MoneyChapter(
        income.rows(),
        stock.suppliers(),
        stock.bodies(),
        money.unpaid(),
        money.unpaidTotal(),
        weights.weights(),
        money.totals(),
        new MoneyChapter.Remarks(income.remarks(), stock.remarks()));
  }
}
