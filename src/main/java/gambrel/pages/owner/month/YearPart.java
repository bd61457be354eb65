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
record YearPart(MonthPage page) {
  /**
   * The bodies of one species in a month or in all of them.
   *
   * @param name the month
   * @param killed those killed in it
   * @param cut those cut in it
   */
  private record YearRow(String name, List<MonthBody> killed, List<MonthBody> cut) {}

  PartView part() {
    var month = page.records().month();
    var tables = new ArrayList<TableView>();
    if (page.records().settings().yearReviews().contains(month.getMonth())) {
      var months = new ArrayList<>(page.records().baseline().months());
      months.remove(0);
      months.add(page.month());
      Stream.of(Species.values()).forEach(species -> tables.addAll(table(species, months)));
    }
    String title =
        month.getMonth() == Month.DECEMBER
            ? page.say("year.title", Integer.toString(month.getYear()))
            : page.say("year.to", page.formats().month(month));
    return PartView.of(title, tables, List.of());
  }

  /** A row for each month that has a body of the species, and one for all of them. */
  private List<TableView> table(Species species, List<MonthBodies> months) {
    var table =
        new TableBuilder<YearRow>("year figures even short")
            .first(page.species(species), YearRow::name)
            .head("titled")
            .number(page.say("killed"), row -> page.count(row.killed().size()))
            .number(page.label("hot_of_a_body", page.unit()), row -> meanHot(row.killed()))
            .number(page.say("chill_percent"), row -> percent(BodyFigure.CHILL, row.killed()))
            .number(page.say("ageing_shrink"), row -> percent(BodyFigure.AGEING, row.killed()))
            .number(page.say("cut_bodies"), row -> page.count(row.cut().size()))
            .number(page.say("bench_percent"), row -> percent(BodyFigure.BENCH, row.cut()))
            .number(page.say("home_percent"), row -> percent(BodyFigure.TAKE_HOME, row.cut()));
    var rows =
        months.stream()
            .map(
                month ->
                    new YearRow(
                        page.formats().month(month.month()),
                        MonthPage.like(month.killed(), species),
                        MonthPage.like(month.cut(), species)))
            .filter(row -> !row.killed().isEmpty() || !row.cut().isEmpty())
            .toList();
    if (!rows.isEmpty()) {
      var killed = rows.stream().flatMap(row -> row.killed().stream()).toList();
      var cut = rows.stream().flatMap(row -> row.cut().stream()).toList();
      table.rows(rows).row("strong", new YearRow(page.say("total"), killed, cut));
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
    return page.weights().hung(mean);
  }

  private String percent(BodyFigure figure, List<MonthBody> bodies) {
    return page.tenths(figure.of(bodies).percent());
  }
}
