package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.money.Debt;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The month in sum: weights, a column for each owner, and money: what its statements came to, and
 * the statements that are not paid.
 */
record TotalsPart(MonthPage page) {
  private static final int MOST_UNPAID = 24;

  /**
   * A sum over bodies.
   *
   * @param key its words
   * @param bodies the bodies of all owners
   * @param text what is printed for those of one owner; empty for zero
   */
  private record SumRow(
      String key, List<MonthBody> bodies, Function<List<MonthBody>, String> text) {}

  /**
   * An amount of money.
   *
   * @param key its words
   * @param amount the amount
   */
  private record AmountRow(String key, Money amount) {}

  /** The totals. The date of the payments is left out if {@code unpaid} has it. */
  PartView totals(PartView unpaid) {
    var statements = statements();
    var tables = Stream.concat(weights().stream(), statements.stream()).toList();
    boolean known = !statements.isEmpty() && unpaid.isEmpty();
    return PartView.kept(
        page.say("totals"), tables, known ? List.of(page.say("payments_known")) : List.of());
  }

  /** Numbers of bodies and weights; a row of zeros is left out. */
  private List<TableView> weights() {
    var month = page.month();
    var killed = month.killed();
    var home = Stream.concat(month.cut().stream(), month.whole().stream()).toList();
    var table =
        new TableBuilder<SumRow>("sums figures short").first("", row -> page.say(row.key()));
    Ownership.in(Stream.concat(killed.stream(), home.stream()).toList())
        .forEach(
            whose ->
                table
                    .number(page.owner(whose), row -> row.text().apply(whose.of(row.bodies())))
                    .head("sum"));
    var rows =
        Stream.of(
            new SumRow("summary.total.killed", killed, this::number),
            sum("summary.total.hot", killed, BodyBalance::hot),
            new SumRow("summary.total.cut", month.cut(), this::number),
            sum("summary.total.boning", home, BodyBalance::boning),
            sum("summary.total.take_home", home, b -> b.outputs().map(Outputs::takeHome)),
            sum("summary.total.offal", home, b -> b.outputs().map(Outputs::offal)),
            sum("summary.total.bone", home, b -> b.outputs().flatMap(Outputs::bone)),
            sum("summary.total.fat", home, b -> b.outputs().flatMap(Outputs::fat)),
            sum("summary.total.waste", home, b -> b.outputs().flatMap(Outputs::waste)));
    return table.rows(table.known(rows)).table();
  }

  private String number(List<MonthBody> bodies) {
    return bodies.isEmpty() ? "" : page.count(bodies.size());
  }

  private SumRow sum(
      String key, List<MonthBody> bodies, Function<BodyBalance, Optional<Weight>> figure) {
    return new SumRow(key, bodies, of -> sum(of, figure));
  }

  private String sum(List<MonthBody> bodies, Function<BodyBalance, Optional<Weight>> figure) {
    var sum = Weight.sum(bodies.stream().flatMap(b -> figure.apply(b.balance()).stream()).toList());
    return sum.isZero() ? "" : page.formats().fitting(sum, page.weights().prose());
  }

  /** The month's statements: charges, tax, payments, and what is open; no tax or credit of zero. */
  private List<TableView> statements() {
    var debts = Debt.of(page.month(), page.records().register());
    if (debts.isEmpty()) {
      return List.of();
    }
    var tax = new AmountRow("summary.total.tax", Debt.sum(debts, d -> d.statement().tax()));
    var credit =
        new AmountRow(
            "summary.total.credit", Debt.sum(debts, d -> atLeastZero(Money.ZERO.minus(d.due()))));
    return new TableBuilder<AmountRow>("statements figures brief short")
        .first("", row -> page.say(row.key()))
        .number("", row -> page.formats().money(row.amount()))
        .rows(
            Stream.of(
                    new AmountRow(
                        "summary.total.charges", Debt.sum(debts, d -> d.statement().charges())),
                    tax,
                    new AmountRow("summary.total.paid", Debt.sum(debts, Debt::paid)),
                    new AmountRow("summary.total.due", Debt.sum(debts, d -> atLeastZero(d.due()))),
                    credit)
                .filter(row -> row != tax && row != credit || !row.amount().equals(Money.ZERO))
                .toList())
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
    var unpaid =
        Debt.until(page.month(), page.records().register()).stream()
            .filter(debt -> debt.due().compareTo(Money.ZERO) > 0)
            .toList();
    int shown = unpaid.size() <= MOST_UNPAID + 1 ? unpaid.size() : MOST_UNPAID;
    var later = unpaid.subList(shown, unpaid.size());
    var table =
        new TableBuilder<Debt>("unpaid figures")
            .first(page.say("issued_on"), debt -> page.formats().date(debt.since()))
            .words(page.say("customer"), debt -> page.names().customer(debt.statement().customer()))
            .words(page.say("body"), debt -> debt.statement().body())
            .number(page.currency(), debt -> due(List.of(debt)))
            .rows(unpaid.subList(0, shown));
    if (!later.isEmpty()) {
      var number = page.say("month.unpaid.later", page.count(later.size()));
      table.add(
          "",
          List.of(
              new Cell("", TableBuilder.FIRST),
              new Cell(number, ""),
              new Cell("", ""),
              new Cell(due(later), TableBuilder.NUMBER)));
    }
    if (!unpaid.isEmpty()) {
      var total = page.label("total", page.say("unpaid_total"));
      table.add(
          "total",
          List.of(
              new Cell(total, TableBuilder.FIRST, 3), new Cell(due(unpaid), TableBuilder.NUMBER)));
    }
    var tables = table.kept("", 2, List.of(page.say("payments_known")));
    return PartView.withRoom(page.say("unpaid"), tables, List.of());
  }

  private String due(List<Debt> debts) {
    return page.formats().bareMoney(Debt.sum(debts, Debt::due));
  }
}
