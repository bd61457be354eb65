package gambrel.pages.owner.month;

import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.money.Debt;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The month in sum: weights, a column for each owner, and money: what its statements came to, and
 * the statements that are not paid.
 */
record TotalsPart(MonthPart.Page page) implements MonthPart {
  private static final int MOST_UNPAID = 24;

  /** Sums that are left out if they are zero. */
  private static final Set<String> OPTIONAL = Set.of("tax", "credit");

  /** A sum, which {@code text} prints for each owner. */
  private record SumRow(String key, Function<Ownership, String> text) {}

  /** The totals. The date of the payments is left out if {@code unpaid} has it. */
  PartView totals(PartView unpaid) {
    var statements = statements();
    var tables = Stream.concat(sums().stream(), statements.stream()).toList();
    boolean known = !statements.isEmpty() && unpaid.isEmpty();
    return PartView.kept(say("totals"), tables, known ? List.of(say("payments_known")) : List.of());
  }

  /** Numbers of bodies and weights; a row of zeros is left out. */
  private List<TableView> sums() {
    var killed = month().killed();
    var home = Stream.concat(month().cut().stream(), month().whole().stream()).toList();
    var table = new TableBuilder<SumRow>("sums figures short").first("", row -> say(row.key()));
    Ownership.in(Stream.concat(killed.stream(), home.stream()).toList())
        .forEach(whose -> table.number(owner(whose), row -> row.text().apply(whose), "sum"));
    var rows =
        Stream.of(
            number("summary.total.killed", killed),
            sum("summary.total.hot", killed, BodyBalance::hot),
            number("summary.total.cut", month().cut()),
            sum("summary.total.boning", home, BodyBalance::boning),
            sum("summary.total.take_home", home, b -> b.outputs().map(Outputs::takeHome)),
            sum("summary.total.offal", home, b -> b.outputs().map(Outputs::offal)),
            sum("summary.total.bone", home, b -> b.outputs().flatMap(Outputs::bone)),
            sum("summary.total.fat", home, b -> b.outputs().flatMap(Outputs::fat)),
            sum("summary.total.waste", home, b -> b.outputs().flatMap(Outputs::waste)));
    return table.rows(table.known(rows)).table();
  }

  private SumRow number(String key, List<MonthBody> bodies) {
    return new SumRow(
        key, whose -> whose.of(bodies).isEmpty() ? "" : count(whose.of(bodies).size()));
  }

  private SumRow sum(
      String key, List<MonthBody> bodies, Function<BodyBalance, Optional<Weight>> figure) {
    return new SumRow(
        key,
        whose -> {
          var known = whose.of(bodies).stream().flatMap(b -> figure.apply(b.balance()).stream());
          var sum = Weight.sum(known.toList());
          return sum.isZero() ? "" : formats().fitting(sum, weights().prose());
        });
  }

  /** The month's statements: charges, tax, payments, and what is open; no tax or credit of zero. */
  private List<TableView> statements() {
    var debts = Debt.of(records());
    var rows =
        Stream.of(
            Map.entry("charges", Debt.sum(debts, debt -> debt.statement().charges())),
            Map.entry("tax", Debt.sum(debts, debt -> debt.statement().tax())),
            Map.entry("paid", Debt.sum(debts, Debt::paid)),
            Map.entry("due", Debt.sum(debts, debt -> atLeastZero(debt.due()))),
            Map.entry("credit", Debt.sum(debts, d -> atLeastZero(Money.ZERO.minus(d.due())))));
    var shown =
        rows.filter(row -> !debts.isEmpty())
            .filter(row -> !OPTIONAL.contains(row.getKey()) || !row.getValue().equals(Money.ZERO));
    return new TableBuilder<Map.Entry<String, Money>>("statements figures brief short")
        .first("", row -> say("summary.total." + row.getKey()))
        .number("", row -> formats().money(row.getValue()))
        .rows(shown.toList())
        .table();
  }

  private static Money atLeastZero(Money amount) {
    return amount.compareTo(Money.ZERO) > 0 ? amount : Money.ZERO;
  }

  /**
   * Statements of this month and before that are not paid in full, oldest first; of many, the last
   * ones in one row.
   */
  PartView unpaid() {
    var unpaid = Debt.unpaid(records());
    int shown = unpaid.size() <= MOST_UNPAID + 1 ? unpaid.size() : MOST_UNPAID;
    var later = unpaid.subList(shown, unpaid.size());
    var table =
        new TableBuilder<Debt>("unpaid figures")
            .first(say("issued_on"), debt -> formats().date(debt.since()))
            .words(say("customer"), debt -> page.names().customer(debt.statement().customer()))
            .words(say("body"), debt -> debt.statement().body())
            .number(currency(), debt -> due(List.of(debt)))
            .rows(unpaid.subList(0, shown));
    if (!later.isEmpty()) {
      var number = say("month.unpaid.later", count(later.size()));
      table.add(
          "",
          List.of(
              new Cell("", TableBuilder.FIRST),
              new Cell(number, ""),
              new Cell("", ""),
              new Cell(due(later), TableBuilder.NUMBER)));
    }
    if (!unpaid.isEmpty()) {
      var total = label("total", say("unpaid_total"));
      table.add(
          "total",
          List.of(
              new Cell(total, TableBuilder.FIRST, 3), new Cell(due(unpaid), TableBuilder.NUMBER)));
    }
    var tables = table.kept("", 2, List.of(say("payments_known")));
    return PartView.withRoom(say("unpaid"), tables, List.of());
  }

  private String due(List<Debt> debts) {
    return formats().bareMoney(Debt.sum(debts, Debt::due));
  }
}
