package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyRate;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.month.money.OwnStock;
import gambrel.insight.month.money.SupplierLine;
import gambrel.insight.month.pace.BoningIntervals;
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
record MoneyPart(MonthPart.Page page) implements MonthPart {
  private static final int MOST_BODIES = 12;
  private static final Comparator<OwnStock> LEAST_MARGIN_FIRST =
      Comparator.comparing((OwnStock s) -> s.margin().map(Money::minor).orElse(Long.MAX_VALUE))
          .thenComparing(s -> s.account().id());

  /** What customers were charged for a unit of weight and for an hour on the block. */
  PartView income() {
    var lines = report().income();
    String hour = currency() + ' ' + say("an_hour");
    var table =
        new TableBuilder<Compared<List<BodyRate>>>("income figures even short")
            .first("", line -> species(line.species()), "kinds")
            .number(say("number"), line -> count(line.month().size()))
            .number(
                label("charges", currency()),
                line -> major(BodyRate.sum(line.month(), BodyRate::money)))
            .number(rateUnit(), line -> major(BodyRate.of(line.month())))
            .number(hour, line -> major(anHour(line).month()))
            .number(label("before", rateUnit()), line -> major(BodyRate.of(line.before())))
            .number(label("before", hour), line -> major(anHour(line).before()))
            .rows(lines);
    var remarks = new ArrayList<>(List.of(say("month.income.read")));
    if (lines.stream().anyMatch(line -> anHour(line).month().isPresent())) {
      remarks.add(say("month.income.hour"));
    }
    return PartView.of(say("income"), table.table(remarks), List.of());
  }

  /** Money for an hour on the block; empty without times of work. */
  private Compared<Optional<BigFraction>> anHour(Compared<List<BodyRate>> income) {
    var pace = report().pace().of(income.species());
    return new Compared<>(
        income.species(),
        anHour(income.month(), pace.month()),
        anHour(income.before(), pace.before()));
  }

  private static Optional<BigFraction> anHour(List<BodyRate> bodies, BoningIntervals work) {
    return BodyRate.of(bodies).flatMap(rate -> work.weightAnHour().map(rate::multiply));
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
    return new TableBuilder<OwnStock>("stock figures even")
        .first(say("body"), own -> own.account().id())
        .words(say("kind"), own -> page.names().kind(own.account().body()), "wider")
        .words(say("supplier"), own -> own.account().body().supplier(), "wider")
        .number(
            say("take_home_of_cold"), own -> tenths(own.account().percent(BodyFigure.TAKE_HOME)))
        .number(label("cost", currency()), own -> money(Optional.of(own.cost())))
        .number(label("take_home_worth", currency()), own -> money(own.value()))
        .number(label("margin", currency()), own -> money(own.margin()))
        .rows(report().stock().stream().sorted(LEAST_MARGIN_FIRST).limit(MOST_BODIES).toList());
  }

  private TableBuilder<SupplierLine> suppliers() {
    return new TableBuilder<SupplierLine>("suppliers figures even below")
        .first(say("supplier"), this::supplier)
        .number(say("number"), line -> count(line.bodies().size()))
        .number(say("take_home_of_cold"), line -> tenths(line.takeHome().map(Spread::median)))
        .number(say("middle"), line -> middle(line.takeHome()))
        .number(label("cost", currency()), line -> money(line.sum(own -> Optional.of(own.cost()))))
        .number(label("take_home_worth", currency()), line -> money(line.sum(OwnStock::value)))
        .number(label("margin", currency()), line -> money(line.sum(OwnStock::margin)))
        .number(label("margin", rateUnit()), line -> major(line.figure().value()))
        .rows(report().suppliers());
  }

  private String supplier(SupplierLine line) {
    String name = line.supplier().isEmpty() ? say("month.stock.nobody") : line.supplier();
    return say("month.pace.piece", name, wording().kind(line.species()));
  }

  /** How to read the tables; suppliers whose bodies gave less beyond chance; what is missing. */
  private List<String> remarks() {
    var lines = report().suppliers();
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
    int more = report().stock().size() - MOST_BODIES;
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

  /** A negative difference, without its sign. */
  private String less(double difference) {
    return major(Exact.ofStatistic(-difference));
  }
}
