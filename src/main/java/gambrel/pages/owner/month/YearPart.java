package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.MonthBodies;
import gambrel.insight.month.figures.MonthBody;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The year month by month, in December and in each month for which the settings ask for it. */
record YearPart(MonthPart.Page page) implements MonthPart {
  /** The bodies of one species in a month or in all of them. */
  private record YearRow(String name, Species species, MonthBodies months) {
    List<MonthBody> killed() {
      return MonthBody.of(species, months.killed());
    }

    List<MonthBody> cut() {
      return MonthBody.of(species, months.cut());
    }
  }

  PartView part() {
    var month = records().month();
    var tables =
        Stream.of(Species.values())
            .filter(species -> records().settings().yearReviews().contains(month.getMonth()))
            .flatMap(species -> table(species).stream())
            .toList();
    String title =
        month.getMonth() == Month.DECEMBER
            ? say("year.title", Integer.toString(month.getYear()))
            : say("year.to", formats().month(month));
    return PartView.of(title, tables, List.of());
  }

  /** A row for each month that has a body of the species, and one for all of them. */
  private List<TableView> table(Species species) {
    var table =
        new TableBuilder<YearRow>("year figures even short")
            .first(species(species), YearRow::name, "titled")
            .number(say("killed"), row -> count(row.killed().size()))
            .number(label("hot_of_a_body", unit()), row -> meanHot(row.killed()))
            .number(say("chill_percent"), row -> percent(BodyFigure.CHILL, row))
            .number(say("ageing_shrink"), row -> percent(BodyFigure.AGEING, row))
            .number(say("cut_bodies"), row -> count(row.cut().size()))
            .number(say("bench_percent"), row -> percent(BodyFigure.BENCH, row))
            .number(say("home_percent"), row -> percent(BodyFigure.TAKE_HOME, row));
    var year = records().year();
    var rows =
        year.months().stream()
            .map(month -> new YearRow(formats().month(month.month()), species, month))
            .filter(row -> !row.killed().isEmpty() || !row.cut().isEmpty())
            .toList();
    if (!rows.isEmpty()) {
      table.rows(rows).row("strong", new YearRow(say("total"), species, year));
    }
    return table.table();
  }

  /** The mean hot weight of a body: a sum would add bodies of customers to the shop's own. */
  private String meanHot(List<MonthBody> killed) {
    var hot = killed.stream().flatMap(body -> body.balance().hot().stream()).toList();
    return hot.isEmpty()
        ? ""
        : weights().hung(Optional.of(Weight.of(Weight.sum(hot).fraction().divide(hot.size()))));
  }

  private String percent(BodyFigure figure, YearRow row) {
    return tenths(figure.of(row.months(), row.species()).percent());
  }
}
