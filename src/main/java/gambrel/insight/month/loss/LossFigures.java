package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Split;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.month.findings.MonthFigure.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What groups of bodies lost in a month, compared with like bodies of the twelve months before. */
public final class LossFigures {
  private final MonthRecords records;
  private final Loss loss;
  private final List<MonthFigure> figures;

  private LossFigures(MonthRecords records, Loss loss, List<MonthFigure> figures) {
    this.records = records;
    this.loss = loss;
    this.figures = figures;
  }

  /**
   * The losses of every group and owner of which the month has a body with that loss: in per cent,
   * as a weight, and in money if values are known.
   */
  public static List<MonthFigure> of(MonthRecords records) {
    var figures = new ArrayList<MonthFigure>();
    for (var loss : Loss.values()) {
      var ofLoss = new LossFigures(records, loss, figures);
      Compared.bySpecies(loss.of(records.bodies()), records.baseline().of(loss))
          .forEach(ofLoss::add);
    }
    return figures;
  }

  private void add(Compared<List<MonthBody>> bodies) {
    var all = Stream.concat(bodies.before().stream(), bodies.month().stream()).toList();
    for (var split : Split.values()) {
      for (var band : BodyGroup.of(split, all)) {
        for (var whose : Ownership.values()) {
          add(
              whose,
              band,
              bodies.map(some -> whose.of(some).stream().filter(band::holds).toList()));
        }
      }
    }
  }

  private void add(Ownership whose, BodyGroup band, Compared<List<MonthBody>> bodies) {
    var lost = bodies.map(loss.figure()::of);
    var month = lost.month();
    if (!month.isKnown()) {
      return;
    }
    var before = lost.before();
    var all =
        MonthFigure.of(
                FigureName.percentOf(loss), bodies.species(), band, month.bodies(), month.percent())
            .with(whose);
    figures.add(
        all.with(
            new Comparison(
                before.bodies(), before.percent(), loss.figure().spread(bodies.before()))));
    var weight = month.part().fraction();
    var weightBefore = Optional.of(before.part().fraction()).filter(w -> before.isKnown());
    figures.add(
        all.with(FigureName.weightOf(loss), weight)
            .with(Comparison.of(before.bodies(), weightBefore)));
    records
        .rail()
        .of(bodies.species(), weight)
        .map(money -> BigFraction.of(money.minor(), records.minorUnits()))
        .map(value -> all.with(FigureName.valueOf(loss), value))
        .map(figure -> figure.with(Comparison.of(before.bodies(), Optional.empty())))
        .ifPresent(figures::add);
  }
}
