package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Ratio;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The year month by month, which the summary of December carries, and of each month asked for. */
final class YearPart {
  private final MonthPage page;

  YearPart(MonthPage page) {
    this.page = page;
  }

  PartView part() {
    var month = page.records().month();
    var tables = new ArrayList<TableView>();
    if (page.records().settings().yearReviews().contains(month.getMonth())) {
      var months = new ArrayList<>(page.records().baseline().months());
      months.remove(0);
      months.add(page.records().bodies());
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
        new TableBuilder("year", "even short")
            .first(page.species(species), "titled")
            .number(page.say("killed"))
            .number(page.label("hot_of_a_body", page.unit()))
            .number(page.say("chill_percent"))
            .number(page.say("ageing_shrink"))
            .number(page.say("cut_bodies"))
            .number(page.say("bench_percent"))
            .number(page.say("home_percent"));
    var killed = new ArrayList<MonthBody>();
    var cut = new ArrayList<MonthBody>();
    for (var month : months) {
      var k = like(month.killed(), species);
      var c = like(month.cut(), species);
      killed.addAll(k);
      cut.addAll(c);
      if (!k.isEmpty() || !c.isEmpty()) {
        row(table, "", page.formats().month(month.month()), k, c);
      }
    }
    if (!table.isEmpty()) {
      row(table, "strong", page.say("total"), killed, cut);
    }
    return table.table();
  }

  private static List<MonthBody> like(List<MonthBody> bodies, Species species) {
    return bodies.stream().filter(b -> b.body().species() == species).toList();
  }

  private void row(
      TableBuilder table, String style, String month, List<MonthBody> killed, List<MonthBody> cut) {
    table.styled(
        style,
        month,
        page.count(killed.size()),
        mean(killed.stream().flatMap(b -> b.balance().hot().stream()).toList()),
        percent(BodyFigure.CHILL.of(killed)),
        percent(BodyFigure.AGEING.of(killed)),
        page.count(cut.size()),
        percent(BodyFigure.BENCH.of(cut)),
        percent(BodyFigure.TAKE_HOME.of(cut)));
  }

  /** A body's, since a sum would add customers' and the shop's own. */
  private String mean(List<Weight> hot) {
    return hot.isEmpty()
        ? ""
        : page.formats()
            .bareWeight(
                Weight.of(Weight.sum(hot).fraction().divide(hot.size())), page.places().hung());
  }

  private String percent(Ratio ratio) {
    return page.tenths(ratio.percent());
  }
}
