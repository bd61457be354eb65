package gambrel.pages.owner.month;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.pages.owner.ShopPart;
import gambrel.pages.views.PartView;
import gambrel.pages.views.ShopView;
import gambrel.pages.views.SummaryView;
import gambrel.pages.words.Wording;
import gambrel.trade.register.RegisterRow;
import java.time.OffsetDateTime;
import java.util.Comparator;
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
    var first = new FirstPart(page);
    String name = wording.formats().month(records.month());
    return new SummaryView(
        shop.page(
            wording.say("summary.title", name),
            wording.say("summary.running", records.settings().name(), name)),
        wording.words().labels(),
        // The owner knows the address; it stands at the foot.
        new ShopView(records.settings().name(), List.of(), List.of()),
        wording.formats().opening(name),
        known(records, wording),
        first.view(),
        new LossPart(page).main(),
        money(page),
        first.others(),
        appendix(page));
  }

  /** How many findings of a month stand on the first page of its summary. */
  public static int findingsOnFirstPage(MonthReport report, Wording wording) {
    return new FirstPart(MonthPart.Page.of(report, wording)).fitting().size();
  }

  private static List<PartView> money(MonthPart.Page page) {
    var money = new MoneyPart(page);
    return shown(
        Stream.of(
            money.earned(), money.bids(), money.advice(), money.suppliers(), money.accounts()));
  }

  private static List<PartView> appendix(MonthPart.Page page) {
    var yields = new YieldsPart(page);
    var bodies = new BodiesPart(page);
    return shown(
        Stream.concat(
            new LossPart(page).others().stream(),
            Stream.of(
                new AgainstPart(page).part(),
                yields.beforeAndNow(),
                yields.primals(),
                new PacePart(page).part(),
                new ValuePart(page).part(),
                new MoneyPart(page).stock(),
                new MoneyPart(page).unpaid(),
                bodies.batches(),
                new YearPart(page).part(),
                bodies.bodies())));
  }

  private static List<PartView> shown(Stream<PartView> parts) {
    return parts.filter(part -> !part.isEmpty()).toList();
  }

  /** The time of the last weighing of the month's bodies, or of their last statement if later. */
  private static String known(MonthRecords records, Wording wording) {
    var ids = MonthBody.ids(records.bodies().bodies());
    var issued =
        records.register().latest().stream()
            .filter(row -> ids.contains(row.body()))
            .map(RegisterRow::issued);
    var weighed = records.bodies().lastWeighing().map(OffsetDateTime::toLocalDateTime).stream();
    return Stream.concat(weighed, issued)
        .max(Comparator.naturalOrder())
        .map(wording.formats()::moment)
        .map(moment -> wording.say("summary.known", moment))
        .orElse("");
  }
}
