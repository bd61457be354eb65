package gambrel.pages.owner.month;

import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.money.Debt;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The picture of all weight in sums of each owner, and the statements that are not paid. */
record TotalsPart(MonthPart.Page page) implements MonthPart {
  /** A row for each owner; a column of which no owner has a weight is left out. */
  List<TableView> sums() {
    var lines =
        report().figures(FigureName.ROOM_FIRST).filter(sum -> sum.whose().isPresent()).toList();
    var table =
        new TableBuilder<MonthFigure>("sums figures even short")
            .first("", line -> owner(line.whose().orElseThrow()), "kinds")
            .number(say("number"), line -> count(line.bodies()));
    Stream.of(
            FigureName.ROOM_FIRST,
            FigureName.ROOM_WHOLE,
            FigureName.ROOM_BONING,
            FigureName.ROOM_HOME,
            FigureName.ROOM_OFFAL)
        .filter(name -> lines.stream().anyMatch(line -> !sum(name, line).isEmpty()))
        .forEach(
            name -> table.number(label("kilos." + name.id(), unit()), line -> sum(name, line)));
    return table.rows(lines).table();
  }

  private String sum(FigureName name, MonthFigure line) {
    return report()
        .find(name, line)
        .flatMap(MonthFigure::value)
        .map(sum -> formats().bareWeight(Weight.of(sum), weights().prose()))
        .orElse("");
  }

  /** What customers owe for statements of this month and before, the oldest debt first. */
  PartView unpaid() {
    var table =
        new TableBuilder<List<Debt>>("unpaid figures")
            .first(say("customer"), of -> page.names().customer(of.get(0).statement().customer()))
            .column(say("oldest"), "day", of -> formats().date(of.get(0).since()))
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
