package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The year month by month, in December and in each month for which the settings ask for it. */
record YearPart(MonthPage page) implements MonthPart {
  /** The bodies of one species in a month or in all of them. */
  private record YearRow(String name, List<MonthBody> killed, List<MonthBody> cut) {}

  PartView part() {
    var month = records().month();
    var tables = new ArrayList<TableView>();
    if (records().settings().yearReviews().contains(month.getMonth())) {
      var months = new ArrayList<>(records().baseline().months());
      months.remove(0);
      months.add(month());
      Stream.of(Species.values()).forEach(species -> tables.addAll(table(species, months)));
    }
    String title =
        month.getMonth() == Month.DECEMBER
            ? say("year.title", Integer.toString(month.getYear()))
            : say("year.to", formats().month(month));
    return PartView.of(title, tables, List.of());
  }

  /** A row for each month that has a body of the species, and one for all of them. */
  private List<TableView> table(Species species, List<MonthBodies> months) {
    var table =
        new TableBuilder<YearRow>("year figures even short")
            .first(species(species), YearRow::name)
            .head("titled")
            .number(say("killed"), row -> count(row.killed().size()))
            .number(label("hot_of_a_body", unit()), row -> meanHot(row.killed()))
            .number(say("chill_percent"), row -> percent(BodyFigure.CHILL, row.killed()))
            .number(say("ageing_shrink"), row -> percent(BodyFigure.AGEING, row.killed()))
            .number(say("cut_bodies"), row -> count(row.cut().size()))
            .number(say("bench_percent"), row -> percent(BodyFigure.BENCH, row.cut()))
            .number(say("home_percent"), row -> percent(BodyFigure.TAKE_HOME, row.cut()));
    var rows =
        months.stream()
            .map(
                month ->
                    new YearRow(
                        formats().month(month.month()),
                        MonthPart.like(month.killed(), species),
                        MonthPart.like(month.cut(), species)))
            .filter(row -> !row.killed().isEmpty() || !row.cut().isEmpty())
            .toList();
    if (!rows.isEmpty()) {
      var killed = rows.stream().flatMap(row -> row.killed().stream()).toList();
      var cut = rows.stream().flatMap(row -> row.cut().stream()).toList();
      table.rows(rows).row("strong", new YearRow(say("total"), killed, cut));
    }
    return table.table();
  }

  /** The mean hot weight of a body: a sum would add bodies of customers to the shop's own. */
  private String meanHot(List<MonthBody> killed) {
    var hot = killed.stream().flatMap(body -> body.balance().hot().stream()).toList();
    var mean =
        Optional.of(hot)
            .filter(weights -> !weights.isEmpty())
            .map(weights -> Weight.of(Weight.sum(weights).fraction().divide(weights.size())));
    return weights().hung(mean);
  }

  private String percent(BodyFigure figure, List<MonthBody> bodies) {
    return tenths(figure.of(bodies).percent());
  }
}
