package gambrel.insight.month;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Completeness;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.month.findings.MonthFigure.Comparison;
import gambrel.insight.month.findings.MonthFigure.Interval;
import gambrel.insight.month.findings.MonthFigure.Interval.Kind;
import gambrel.insight.month.loss.LossFigures;
import gambrel.insight.month.money.Income;
import gambrel.insight.month.money.SupplierLine;
import gambrel.insight.month.pace.Pace;
import gambrel.insight.month.pace.PaceLine;
import gambrel.insight.month.value.BodyWorth;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.yields.BonerComparison;
import gambrel.insight.month.yields.Yields;
import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Makes the list of a month's figures from its parts. */
final class MonthFigureBuilder {
  private final MonthRecords records;
  private final List<MonthFigure> figures = new ArrayList<>();

  MonthFigureBuilder(MonthRecords records) {
    this.records = records;
  }

  List<MonthFigure> build(MonthParts parts) {
    figures.addAll(LossFigures.of(records));
    parts.hanging().forEach(hanging -> figures.addAll(hanging.figures()));
    parts.furtherDays().forEach(day -> figures.addAll(day.figures(records.minorUnits())));
    parts.completeness().forEach(this::known);
    figures.addAll(Yields.of(records));
    parts.boners().forEach(this::boners);
    parts.paceLines().forEach(this::pace);
    parts.worths().forEach(this::worth);
    parts.choices().forEach(this::ways);
    parts.income().forEach(this::income);
    parts.suppliers().forEach(this::supplier);
    return figures;
  }

  private void known(Completeness weight) {
    figures.add(
        new MonthFigure(
            FigureName.of(weight.what()),
            Optional.empty(),
            Optional.empty(),
            BodyGroup.ALL,
            weight.of(),
            Optional.of(BigFraction.of(weight.known())),
            Comparison.NONE,
            Optional.empty()));
  }

  private void boners(BonerComparison comparison) {
    comparison
        .differences()
        .forEach(
            (boner, difference) ->
                figures.add(
                    MonthFigure.of(
                            FigureName.BONE_TO_OTHERS_POINTS,
                            comparison.species(),
                            new FigureGroup.Named(boner),
                            difference.bodies(),
                            Optional.of(Exact.ofStatistic(difference.mean())))
                        .with(Comparison.of(difference.others(), Optional.empty()))
                        .with(interval(difference, 1))));
  }

  private void pace(PaceLine line) {
    var group = new FigureGroup.Part(line.item(), line.boner());
    var month = line.month();
    var before = line.before();
    int others = before.map(Pace::pieces).orElse(0);
    var median = Optional.of(month.each().median());
    figures.add(
        MonthFigure.of(FigureName.MINUTES_A_PIECE, line.species(), group, month.pieces(), median)
            .with(new Comparison(others, Optional.empty(), before.map(Pace::each))));
    figures.add(
        MonthFigure.of(
                FigureName.BONED_AN_HOUR,
                line.species(),
                group,
                month.pieces(),
                month.weightAnHour())
            .with(Comparison.of(others, before.flatMap(Pace::weightAnHour))));
  }

  private void worth(Compared<List<BodyWorth>> worths) {
    var month = worths.month();
    var before = worths.before();
    figures.add(
        MonthFigure.of(
                FigureName.WORTH_OF_COLD,
                worths.species(),
                BodyGroup.ALL,
                month.size(),
                BodyWorth.rateOf(month))
            .with(
                new Comparison(
                    before.size(), BodyWorth.rateOf(before), BodyWorth.spreadOf(before))));
    for (var body : month) {
      figures.add(
          MonthFigure.of(
              FigureName.WORTH_OF_COLD,
              worths.species(),
              new FigureGroup.OfBody(body.account()),
              1,
              Optional.of(body.rate())));
    }
  }

  /** The ways to cut a piece; their intervals are of the difference to the best way. */
  private void ways(CutChoice choice) {
    var name = choice.perPiece() ? FigureName.CUT_WORTH_OF_PIECE : FigureName.CUT_WORTH_OF_BODY;
    for (var way : choice.ways()) {
      figures.add(
          MonthFigure.of(
                  name,
                  choice.species(),
                  new FigureGroup.Way(choice.piece(), way.items()),
                  way.bodies(),
                  Optional.of(way.value()))
              .with(way.toBest().map(difference -> interval(difference, 1))));
    }
  }

  private void income(Compared<Income> income) {
    var month = income.month();
    var before = income.before();
    figures.add(
        MonthFigure.of(
                FigureName.CHARGES_OF_BONING,
                income.species(),
                BodyGroup.ALL,
                month.bodies(),
                month.minorAUnit().map(this::major))
            .with(Comparison.of(before.bodies(), before.minorAUnit().map(this::major))));
  }

  private void supplier(SupplierLine line) {
    figures.add(
        MonthFigure.of(
                FigureName.MARGIN_OF_COLD,
                line.species(),
                new FigureGroup.Named(line.supplier()),
                line.counted(),
                line.marginAUnit().map(this::major))
            .with(line.toOthers().map(d -> interval(d, records.minorUnits()))));
  }

  private static Interval interval(Difference difference, long minorUnits) {
    return new Interval(
        Kind.DIFFERENCE,
        Exact.ofStatistic(difference.low() / minorUnits),
        Exact.ofStatistic(difference.high() / minorUnits));
  }

  private BigFraction major(BigFraction minor) {
    return minor.divide(BigFraction.of(records.minorUnits()));
  }
}
