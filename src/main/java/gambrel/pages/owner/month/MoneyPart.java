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
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** What cutting brought, and what the shop bought. */
record MoneyPart(MonthPage page) implements MonthPart {
  private static final int MOST_BODIES = 12;
  private static final Comparator<OwnStock> LEAST_MARGIN_FIRST =
      Comparator.comparing((OwnStock s) -> s.margin().map(Money::minor).orElse(Long.MAX_VALUE))
          .thenComparing(s -> s.account().id());

  /** What customers were charged for a unit of weight and for an hour on the block. */
  PartView income() {
    var lines = parts().income();
    var pace = parts().pace();
    String hour = currency() + ' ' + say("an_hour");
    var table =
        new TableBuilder<Compared<Income>>("income figures even short")
            .first("", line -> species(line.species()))
            .head("kinds")
            .number(say("number"), line -> count(line.month().bodies()))
            .number(
                label("charges", currency()), line -> formats().bareMoney(line.month().charges()))
            .number(rateUnit(), line -> minor(line.month().minorAUnit()))
            .number(hour, line -> minor(anHour(line, line.month(), pace.month())))
            .number(label("before", rateUnit()), line -> minor(line.before().minorAUnit()))
            .number(
                label("before", hour), line -> minor(anHour(line, line.before(), pace.before())))
            .rows(lines);
    var remarks = new ArrayList<>(List.of(say("month.income.read")));
    if (lines.stream().anyMatch(line -> anHour(line, line.month(), pace.month()).isPresent())) {
      remarks.add(say("month.income.hour"));
    }
    return PartView.of(say("income"), table.table(remarks), List.of());
  }

  /** Minor units for an hour on the block; empty without times of work. */
  private static Optional<BigFraction> anHour(
      Compared<Income> line, Income income, BoningIntervals intervals) {
    var weight = intervals.of(line.species()).flatMap(Pace::weightAnHour);
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
    return PartView.withRoom(say("stock"), tables, suppliers.isEmpty() ? remarks : List.of());
  }

  /** The month's bodies with the least margin; the data file has all of them. */
  private TableBuilder<OwnStock> bodies() {
    var table =
        new TableBuilder<OwnStock>("stock figures even")
            .first(say("body"), own -> own.account().id())
            .words(say("kind"), own -> page.names().kind(own.account().body()))
            .head("wider")
            .words(say("supplier"), own -> own.account().body().supplier())
            .head("wider")
            .number(say("take_home_of_cold"), own -> tenths(own.takeHomePercent()));
    sums(table, own -> Optional.of(own.cost()), OwnStock::value, OwnStock::margin);
    return table.rows(
        parts().stock().stream().sorted(LEAST_MARGIN_FIRST).limit(MOST_BODIES).toList());
  }

  private <R> void sums(
      TableBuilder<R> table,
      Function<R, Optional<Money>> cost,
      Function<R, Optional<Money>> value,
      Function<R, Optional<Money>> margin) {
    table
        .number(label("cost", currency()), row -> money(cost.apply(row)))
        .number(label("take_home_worth", currency()), row -> money(value.apply(row)))
        .number(label("margin", currency()), row -> money(margin.apply(row)));
  }

  private TableBuilder<SupplierLine> suppliers() {
    var table =
        new TableBuilder<SupplierLine>("suppliers figures even below")
            .first(say("supplier"), this::supplier)
            .number(say("number"), line -> count(line.bodies()))
            .number(say("take_home_of_cold"), line -> tenths(line.takeHome().map(Spread::median)))
            .number(say("middle"), line -> line.takeHome().map(this::middle).orElse(""));
    sums(
        table,
        line -> counted(line).map(SupplierLine::cost),
        line -> counted(line).map(SupplierLine::value),
        line -> counted(line).map(SupplierLine::margin));
    return table
        .number(label("margin", rateUnit()), line -> minor(line.marginAUnit()))
        .rows(parts().suppliers());
  }

  /** The line if a body of it has a value. */
  private static Optional<SupplierLine> counted(SupplierLine line) {
    return Optional.of(line).filter(l -> l.counted() > 0);
  }

  private String supplier(SupplierLine line) {
    String name = line.supplier().isEmpty() ? say("month.stock.nobody") : line.supplier();
    return say("month.pace.piece", name, wording().kind(line.species()));
  }

  /** How to read the tables; suppliers whose bodies gave less beyond chance; what is missing. */
  private List<String> remarks() {
    var lines = parts().suppliers();
    if (lines.isEmpty()) {
      return Ownership.OWN.of(month().cut()).isEmpty()
          ? List.of()
          : List.of(say("month.stock.none"));
    }
    var remarks = new ArrayList<>(List.of(say("month.stock.read")));
    lines.stream().flatMap(line -> less(line).stream()).forEach(remarks::add);
    if (lines.stream().allMatch(line -> line.toOthers().isEmpty())) {
      remarks.add(say("month.stock.few", count(GroupComparison.FEWEST)));
    }
    int more = parts().stock().size() - MOST_BODIES;
    if (more > 0) {
      remarks.add(wording().counted("month.stock.more", more));
    }
    return remarks;
  }

  private Optional<String> less(SupplierLine line) {
    return line.toOthers()
        .filter(difference -> difference.high() < 0)
        .map(
            difference ->
                say(
                    "month.stock.less",
                    line.supplier(),
                    wording().kind(line.species()),
                    less(difference.mean()),
                    less(difference.high()),
                    less(difference.low()),
                    unit()));
  }

  /** A negative difference in minor units, without its sign. */
  private String less(double difference) {
    return minor(Optional.of(Exact.ofStatistic(-difference)));
  }
}
