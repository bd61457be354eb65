package gambrel.insight.month;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ratio;
import gambrel.insight.month.findings.Completeness;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.month.findings.MonthFigure.Comparison;
import gambrel.insight.month.findings.MonthFigure.Interval;
import gambrel.insight.month.findings.MonthFigure.Interval.Kind;
import gambrel.insight.month.loss.LossRow;
import gambrel.insight.month.money.IncomeLine;
import gambrel.insight.month.money.SupplierLine;
import gambrel.insight.month.pace.Pace;
import gambrel.insight.month.pace.PaceLine;
import gambrel.insight.month.value.BodyWorth;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.value.WorthLine;
import gambrel.insight.month.yields.Yields;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/** Puts the figures of a month together from its parts. */
final class MonthFigureBuilder {
  private final MonthRecords records;
  private final List<MonthFigure> figures = new ArrayList<>();

  MonthFigureBuilder(MonthRecords records) {
    this.records = records;
  }

  List<MonthFigure> build(MonthParts parts) {
    parts.losses().forEach(this::loss);
    parts.hanging().forEach(hanging -> figures.addAll(hanging.figures()));
    parts.furtherDays().forEach(day -> figures.addAll(day.figures(records.minorUnits())));
    parts.completeness().forEach(this::known);
    figures.addAll(Yields.of(records));
    for (var comparison : parts.boners()) {
      comparison.differences().forEach((boner, d) -> boner(comparison.species(), boner, d));
    }
    parts.paceLines().forEach(this::pace);
    parts.worths().forEach(this::worth);
    for (var choice : parts.choices()) {
      choice.ways().forEach(way -> way(choice, way));
    }
    parts.income().forEach(this::income);
    parts.suppliers().forEach(this::supplier);
    return figures;
  }

  private void add(
      FigureName name,
      Species species,
      FigureGroup group,
      int bodies,
      Optional<BigFraction> value,
      UnaryOperator<MonthFigure> with) {
    figures.add(with.apply(MonthFigure.of(name, species, group, bodies, value)));
  }

  private void loss(LossRow row) {
    var month = row.month();
    int others = row.before().bodies();
    var lost = Optional.of(row.before()).filter(Ratio::isKnown).map(r -> r.part().fraction());
    loss(
        row,
        FigureName.percentOf(row.loss()),
        month.percent(),
        new Comparison(others, row.before().percent(), row.spread()));
    loss(
        row,
        FigureName.weightOf(row.loss()),
        Optional.of(month.part().fraction()),
        Comparison.of(others, lost));
    if (row.money().isPresent()) {
      var value = row.money().map(money -> major(BigFraction.of(money.minor())));
      var before = Comparison.of(others, Optional.empty());
      loss(row, FigureName.valueOf(row.loss()), value, before);
    }
  }

  private void loss(LossRow row, FigureName name, Optional<BigFraction> value, Comparison before) {
    int bodies = row.month().bodies();
    add(name, row.species(), row.band(), bodies, value, f -> f.with(row.whose()).with(before));
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

  private void boner(Species species, String boner, Difference difference) {
    add(
        FigureName.BONE_TO_OTHERS_POINTS,
        species,
        new FigureGroup.Named(boner),
        difference.bodies(),
        Optional.of(Exact.ofStatistic(difference.mean())),
        f ->
            f.with(Comparison.of(difference.others(), Optional.empty()))
                .with(interval(difference, 1)));
  }

  private void pace(PaceLine line) {
    var group = new FigureGroup.Part(line.item(), line.boner());
    var month = line.month();
    var before = line.before();
    int others = before.map(Pace::pieces).orElse(0);
    add(
        FigureName.MINUTES_A_PIECE,
        line.species(),
        group,
        month.pieces(),
        Optional.of(month.each().median()),
        f -> f.with(new Comparison(others, Optional.empty(), before.map(Pace::each))));
    add(
        FigureName.BONED_AN_HOUR,
        line.species(),
        group,
        month.pieces(),
        month.weightAnHour(),
        f -> f.with(Comparison.of(others, before.flatMap(Pace::weightAnHour))));
  }

  private void worth(WorthLine line) {
    var name = FigureName.WORTH_OF_COLD;
    var before = line.before();
    var comparison =
        new Comparison(before.size(), BodyWorth.rateOf(before), BodyWorth.spreadOf(before));
    var rate = BodyWorth.rateOf(line.month());
    int bodies = line.month().size();
    add(name, line.species(), BodyGroup.ALL, bodies, rate, f -> f.with(comparison));
    for (var body : line.month()) {
      var group = new FigureGroup.OfBody(body.account());
      add(name, line.species(), group, 1, Optional.of(body.rate()), f -> f);
    }
  }

  /** A way beside the best; the interval is of the difference to it. */
  private void way(CutChoice choice, CutChoice.Way way) {
    add(
        choice.perPiece() ? FigureName.CUT_WORTH_OF_PIECE : FigureName.CUT_WORTH_OF_BODY,
        choice.species(),
        new FigureGroup.Way(choice.piece(), way.items()),
        way.bodies(),
        Optional.of(way.value()),
        f -> way.toBest().map(d -> f.with(interval(d, 1))).orElse(f));
  }

  private void income(IncomeLine line) {
    var month = line.month();
    var before = line.before();
    add(
        FigureName.CHARGES_OF_BONING,
        line.species(),
        BodyGroup.ALL,
        month.bodies(),
        month.minorAUnit().map(this::major),
        f -> f.with(Comparison.of(before.bodies(), before.minorAUnit().map(this::major))));
  }

  private void supplier(SupplierLine line) {
    long minors = records.minorUnits();
    add(
        FigureName.MARGIN_OF_COLD,
        line.species(),
        new FigureGroup.Named(line.supplier()),
        line.counted(),
        line.marginAUnit().map(this::major),
        f -> line.toOthers().map(d -> f.with(interval(d, minors))).orElse(f));
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
