package gambrel.data;

import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.month.LikeWithLike.Difference;
import gambrel.month.MonthRecords;
import gambrel.month.Ratio;
import gambrel.month.Spread;
import gambrel.month.pace.PaceLine;
import gambrel.month.yields.BonerComparison;
import gambrel.month.yields.Yields;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a month's bodies gave and how fast they were boned, as figures. */
final class YieldMonthFigures {
  private static final String PERCENT = "%";

  private YieldMonthFigures() {}

  static List<MonthFigure> of(MonthRecords records) {
    var figures = new ArrayList<MonthFigure>();
    var yields = Yields.of(records);
    for (var line : yields.lines()) {
      String group = (line.split().id() + " " + line.name()).strip();
      for (var cell : line.cells()) {
        if (cell.month().isKnown()) {
          String figure = cell.figure().id() + "_pct";
          figures.add(percent(figure, line.species(), group, cell.month(), cell.before()));
        }
      }
    }
    for (var share : yields.primals()) {
      String group = share.primal().id();
      figures.add(percent("primal_pct", share.species(), group, share.month(), share.before()));
    }
    for (var comparison : BonerComparison.of(records)) {
      comparison
          .differences()
          .forEach(
              (boner, d) -> figures.add(boner(comparison.species(), boner, d)));
    }
    PaceLine.of(records).lines().forEach(line -> figures.addAll(pace(line, records)));
    return figures;
  }

  private static MonthFigure percent(
      String name, Species species, String group, Ratio month, Optional<Spread> before) {
    return MonthFigure.plain(
        name,
        "",
        species.id(),
        group,
        month.bodies(),
        month.percent().map(p -> Exact.round(p, 3)),
        PERCENT,
        before.map(Spread::number).orElse(0),
        Optional.empty(),
        before);
  }

  /** Percentage points of bone above or below the others' like bodies. */
  private static MonthFigure boner(Species species, String boner, Difference difference) {
    return new MonthFigure(
        "bone_to_others_points",
        "",
        species.id(),
        boner,
        difference.bodies(),
        decimal(difference.mean()),
        PERCENT,
        difference.others(),
        Optional.empty(),
        Optional.empty(),
        "99 % of the difference, shared among comparisons",
        decimal(difference.low()),
        decimal(difference.high()));
  }

  private static List<MonthFigure> pace(PaceLine line, MonthRecords records) {
    String species = line.species().id();
    String group = (line.item().id() + " " + line.boner().orElse("")).strip();
    String unit = records.night().shop().settings().unit().id();
    var before = line.before();
    int pieces = before.map(pace -> pace.pieces()).orElse(0);
    return List.of(
        MonthFigure.plain(
            "minutes_a_piece",
            "",
            species,
            group,
            line.month().pieces(),
            Optional.of(Exact.round(line.month().each().median(), 3)),
            "min",
            pieces,
            Optional.empty(),
            before.map(pace -> pace.each())),
        MonthFigure.plain(
            "boned_an_hour",
            "",
            species,
            group,
            line.month().pieces(),
            line.month().weightAnHour().map(w -> Exact.round(w, 3)),
            unit,
            pieces,
            before.flatMap(pace -> pace.weightAnHour()).map(w -> Exact.round(w, 3)),
            Optional.empty()));
  }

  private static Optional<BigDecimal> decimal(double value) {
    return Optional.of(Exact.round(Exact.ofStatistic(value), 3));
  }
}
