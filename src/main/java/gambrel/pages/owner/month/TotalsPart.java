package gambrel.pages.owner.month;

import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.money.Debt;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The month in sum, with a column for each owner, and the statements that are not paid. */
record TotalsPart(MonthPart.Page page) implements MonthPart {
  /** Numbers of bodies and weights, in a row for each owner; a sum of nothing is blank. */
  List<TableView> sums() {
    var killed = month().killed();
    var home = Stream.concat(month().cut().stream(), month().whole().stream()).toList();
    var table =
        new TableBuilder<Ownership>("sums figures even short")
            .first("", this::owner, "kinds")
            .number(say("summary.total.killed"), whose -> number(whose, killed))
            .number(total("hot"), whose -> sum(whose, killed, BodyBalance::hot))
            .number(say("summary.total.cut"), whose -> number(whose, month().cut()))
            .number(total("boning"), whose -> sum(whose, home, BodyBalance::boning))
            .number(
                total("take_home"),
                whose -> sum(whose, home, b -> b.outputs().map(Outputs::takeHome)))
            .number(
                total("offal"), whose -> sum(whose, home, b -> b.outputs().map(Outputs::offal)));
    return table.rows(table.known(Stream.of(Ownership.values()))).table();
  }

  private String total(String key) {
    return label("summary.total." + key, unit());
  }

  private String number(Ownership whose, List<MonthBody> bodies) {
    var own = whose.of(bodies);
    return own.isEmpty() ? "" : count(own.size());
  }

  private String sum(
      Ownership whose, List<MonthBody> bodies, Function<BodyBalance, Optional<Weight>> figure) {
    var known = whose.of(bodies).stream().flatMap(b -> figure.apply(b.balance()).stream());
    var sum = Weight.sum(known.toList());
    return sum.isZero() ? "" : formats().bareWeight(sum, weights().prose());
  }

  /** What customers owe for statements of this month and before, the oldest debt first. */
  PartView unpaid() {
    var table =
        new TableBuilder<List<Debt>>("unpaid figures")
            .first(say("customer"), of -> page.names().customer(of.get(0).statement().customer()))
            .words(say("oldest"), of -> formats().date(of.get(0).since()))
            .words(
                say("bodies_owed"),
                of -> of.stream().map(d -> d.statement().body()).collect(Collectors.joining(", ")))
            .number(
                label("accounts.owed", currency()),
                of -> formats().bareMoney(Debt.sum(of, Debt::due)));
    var unpaid = Debt.unpaid(records()).stream();
    table.rows(Groups.inOrder(unpaid, debt -> debt.statement().customer()).values());
    return PartView.withRoom(say("unpaid"), table.table(), List.of());
  }
}
