package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.money.Income;
import gambrel.insight.month.money.OwnStock;
import gambrel.insight.month.money.SupplierLine;
import gambrel.insight.month.pace.BoningIntervals;
import gambrel.insight.month.pace.Pace;
import gambrel.pages.owner.Names;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What cutting brought, and what the shop bought. */
final class MoneyPart {
  private static final int MOST_BODIES = 12;
  private static final Comparator<OwnStock> LEAST_MARGIN_FIRST =
      Comparator.comparing((OwnStock s) -> s.margin().map(Money::minor).orElse(Long.MAX_VALUE))
          .thenComparing(s -> s.account().id());

  private final MonthPage page;
  private final Names named;

  MoneyPart(MonthPage page) {
    this.page = page;
    this.named = new Names(page.records().night(), page.wording());
  }

  /** What customers were charged for a unit of weight and for an hour on the block. */
  PartView income() {
    String hour = page.currency() + ' ' + page.say("an_hour");
    var table =
        new TableBuilder("income", "even short")
            .first("", "kinds")
            .number(page.say("number"))
            .number(page.label("charges", page.currency()))
            .number(page.rateUnit())
            .number(hour)
            .number(page.label("before", page.rateUnit()))
            .number(page.label("before", hour));
    boolean hours = false;
    for (var line : page.parts().income()) {
      var pace = page.parts().pace();
      String anHour = page.minor(anHour(line, line.month(), pace.month()));
      hours |= !anHour.isEmpty();
      table.row(
          page.species(line.species()),
          page.count(line.month().bodies()),
          page.formats().bareMoney(line.month().charges()),
          page.minor(line.month().minorAUnit()),
          anHour,
          page.minor(line.before().minorAUnit()),
          page.minor(anHour(line, line.before(), pace.before())));
    }
    var remarks = new ArrayList<>(List.of(page.say("month.income.read")));
    if (hours) {
      remarks.add(page.say("month.income.hour"));
    }
    return PartView.of(page.say("income"), table.table(remarks), List.of());
  }

  private static Optional<BigFraction> anHour(
      Compared<Income> line, Income income, BoningIntervals stints) {
    var weight = stints.of(line.species()).flatMap(Pace::weightAnHour);
    return income.minorAUnit().flatMap(rate -> weight.map(rate::multiply));
  }

  /** What the shop bought for itself: body by body, and by supplier. */
  PartView stock() {
    var remarks = remarks();
    var suppliers = suppliers().kept("room", 1, remarks);
    var tables = new ArrayList<TableView>();
    if (!suppliers.isEmpty() || !remarks.isEmpty()) {
      tables.addAll(bodies().table());
      tables.addAll(suppliers);
    }
    return PartView.withRoom(page.say("stock"), tables, suppliers.isEmpty() ? remarks : List.of());
  }

  /** The month's bodies, least margin first; the rest are in the data file. */
  private TableBuilder bodies() {
    var table =
        new TableBuilder("stock", "even")
            .first(page.say("body"))
            .words(page.say("kind"), "wider")
            .words(page.say("supplier"), "wider");
    sums(table.number(page.say("take_home_of_cold")));
    page.parts().stock().stream()
        .sorted(LEAST_MARGIN_FIRST)
        .limit(MOST_BODIES)
        .forEach(
            own ->
                table.row(
                    own.account().id(),
                    named.kind(own.account().body()),
                    own.account().body().supplier(),
                    page.tenths(own.takeHomePercent()),
                    page.formats().bareMoney(own.cost()),
                    page.money(own.value()),
                    page.money(own.margin())));
    return table;
  }

  private TableBuilder sums(TableBuilder table) {
    return table
        .number(page.label("cost", page.currency()))
        .number(page.label("take_home_worth", page.currency()))
        .number(page.label("margin", page.currency()));
  }

  private TableBuilder suppliers() {
    var table =
        new TableBuilder("suppliers", "even below")
            .first(page.say("supplier"))
            .number(page.say("number"))
            .number(page.say("take_home_of_cold"))
            .number(page.say("middle"));
    sums(table).number(page.label("margin", page.rateUnit()));
    page.parts().suppliers().forEach(line -> supplier(table, line));
    return table;
  }

  private void supplier(TableBuilder table, SupplierLine line) {
    var known = Optional.of(line).filter(l -> l.counted() > 0);
    String name = line.supplier().isEmpty() ? page.say("month.stock.nobody") : line.supplier();
    table.row(
        page.say("month.pace.piece", name, page.kind(line.species())),
        page.count(line.bodies()),
        page.tenths(line.takeHome().map(Spread::median)),
        line.takeHome().map(page::middle).orElse(""),
        page.money(known.map(SupplierLine::cost)),
        page.money(known.map(SupplierLine::value)),
        page.money(known.map(SupplierLine::margin)),
        page.minor(line.marginAUnit()));
  }

  /**
   * How to read the tables; which supplier's bodies gave less beyond chance; what to write down.
   */
  private List<String> remarks() {
    var lines = page.parts().suppliers();
    if (lines.isEmpty()) {
      return Ownership.OWN.of(page.records().bodies().cut()).isEmpty()
          ? List.of()
          : List.of(page.say("month.stock.none"));
    }
    var remarks = new ArrayList<>(List.of(page.say("month.stock.read")));
    lines.stream().flatMap(line -> less(line).stream()).forEach(remarks::add);
    if (lines.stream().allMatch(line -> line.toOthers().isEmpty())) {
      remarks.add(page.say("month.stock.few", page.count(GroupComparison.FEWEST)));
    }
    int more = page.parts().stock().size() - MOST_BODIES;
    if (more > 0) {
      remarks.add(page.counted("month.stock.more", more));
    }
    return remarks;
  }

  private Optional<String> less(SupplierLine line) {
    return line.toOthers()
        .filter(difference -> difference.high() < 0)
        .map(
            difference ->
                page.say(
                    "month.stock.less",
                    line.supplier(),
                    page.kind(line.species()),
                    page.minor(Exact.ofStatistic(-difference.mean())),
                    page.minor(Exact.ofStatistic(-difference.high())),
                    page.minor(Exact.ofStatistic(-difference.low())),
                    page.unit()));
  }
}
