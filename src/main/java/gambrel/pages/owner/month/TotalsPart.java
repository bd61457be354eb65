package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.money.Debt;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The month in sum: weights, a column for each owner, and what its statements came to. */
final class TotalsPart {
  private final MonthPage page;
  private final List<MonthBody> home;
  private final List<Ownership> owners;
  private final TableBuilder weights = new TableBuilder("sums", "short").first("");

  TotalsPart(MonthPage page) {
    this.page = page;
    var month = page.records().bodies();
    this.home = Stream.concat(month.cut().stream(), month.whole().stream()).toList();
    this.owners = Ownership.in(Stream.concat(month.killed().stream(), home.stream()).toList());
  }

  /**
   * The totals.
   *
   * @param unpaid whether the part before lists unpaid statements and so says as of when
   */
  PartView part(boolean unpaid) {
    var statements = statements();
    boolean known = !statements.isEmpty() && !unpaid;
    return PartView.kept(
        page.say("totals"),
        Stream.concat(weights().stream(), statements.stream()).toList(),
        known ? List.of(page.say("payments_known")) : List.of());
  }

  /** Numbers of bodies and weights; what is zero is left out. */
  private List<TableView> weights() {
    owners.forEach(whose -> weights.number(page.owner(whose), "sum"));
    var month = page.records().bodies();
    bodies("summary.total.killed", month.killed());
    add("summary.total.hot", month.killed(), BodyBalance::hot);
    bodies("summary.total.cut", month.cut());
    add("summary.total.boning", home, BodyBalance::boning);
    add("summary.total.take_home", home, b -> b.outputs().map(Outputs::takeHome));
    add("summary.total.offal", home, b -> b.outputs().map(Outputs::offal));
    add("summary.total.bone", home, b -> b.outputs().flatMap(Outputs::bone));
    add("summary.total.fat", home, b -> b.outputs().flatMap(Outputs::fat));
    add("summary.total.waste", home, b -> b.outputs().flatMap(Outputs::waste));
    return weights.table();
  }

  private void bodies(String key, Collection<MonthBody> bodies) {
    row(key, bodies, of -> of.isEmpty() ? "" : page.count(of.size()));
  }

  private void add(
      String key, Collection<MonthBody> bodies, Function<BodyBalance, Optional<Weight>> figure) {
    row(key, bodies, of -> sum(of, figure));
  }

  private String sum(List<MonthBody> bodies, Function<BodyBalance, Optional<Weight>> figure) {
    var sum = Weight.sum(bodies.stream().flatMap(b -> figure.apply(b.balance()).stream()).toList());
    return sum.isZero() ? "" : page.places().sum(sum, page.places().prose());
  }

  private void row(
      String key, Collection<MonthBody> bodies, Function<List<MonthBody>, String> text) {
    var texts = owners.stream().map(whose -> text.apply(whose.of(bodies))).toList();
    if (texts.stream().anyMatch(t -> !t.isEmpty())) {
      weights.row(Stream.concat(Stream.of(page.say(key)), texts.stream()).toArray());
    }
  }

  /** The month's statements: charges, tax, what was paid and what is open of them. */
  private List<TableView> statements() {
    var table = new TableBuilder("statements", "brief short").first("").number("");
    var debts = Debt.of(page.records().bodies(), page.records().register());
    if (!debts.isEmpty()) {
      var tax = Debt.sum(debts, d -> d.statement().tax());
      var credit = Debt.sum(debts, d -> atLeastZero(Money.ZERO.minus(d.due())));
      row(table, "summary.total.charges", Debt.sum(debts, d -> d.statement().charges()));
      if (!tax.equals(Money.ZERO)) {
        row(table, "summary.total.tax", tax);
      }
      row(table, "summary.total.paid", Debt.sum(debts, Debt::paid));
      row(table, "summary.total.due", Debt.sum(debts, d -> atLeastZero(d.due())));
      if (!credit.equals(Money.ZERO)) {
        row(table, "summary.total.credit", credit);
      }
    }
    return table.table();
  }

  private void row(TableBuilder table, String key, Money amount) {
    table.row(page.say(key), page.formats().money(amount));
  }

  private static Money atLeastZero(Money amount) {
    return amount.compareTo(Money.ZERO) > 0 ? amount : Money.ZERO;
  }
}
