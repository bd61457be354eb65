package gambrel.insight.month.loss;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.BodyGroup.Split;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthFigure.Comparison;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What groups of bodies lost in a month, compared with like bodies of the twelve months before:
 * first by owner, then of all owners by day, chiller, scale and boner.
 */
public final class LossFigures {
  private final MonthRecords records;
  private final BodyFigure loss;
  private final List<MonthFigure> figures;

  private LossFigures(MonthRecords records, BodyFigure loss, List<MonthFigure> figures) {
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
    for (var loss : BodyFigure.LOSSES) {
      records.with(loss).forEach(new LossFigures(records, loss, figures)::add);
    }
    return figures;
  }

  private void add(Compared<List<MonthBody>> bodies) {
    for (var split : Split.BY_OWNER) {
      for (var group : BodyGroup.of(split, Compared.all(bodies))) {
        for (var whose : Ownership.values()) {
          var some = bodies.map(all -> whose.of(all).stream().filter(group::holds).toList());
          add(Optional.of(whose), group, some);
        }
      }
    }
    add(Optional.empty(), BodyGroup.ALL, bodies);
    for (var split : Split.places(loss)) {
      for (var group : BodyGroup.of(split, bodies.month())) {
        var month = bodies.month().stream().filter(group::holds).toList();
        // A day has no like before it: it is compared with all days.
        boolean day = split == Split.KILLED || split == Split.CUT;
        var before = bodies.before().stream().filter(body -> day || group.holds(body)).toList();
        add(Optional.empty(), group, new Compared<>(bodies.species(), month, before));
      }
    }
  }

  private void add(Optional<Ownership> whose, BodyGroup group, Compared<List<MonthBody>> bodies) {
    var lost = bodies.map(loss::of);
    var month = lost.month();
    var before = lost.before();
    if (!month.isKnown()) {
      return;
    }
    var species = bodies.species();
    var percent = FigureName.percentOf(loss);
    var each = MonthFigure.of(percent, species, group, month.bodies(), month.percent());
    var all = whose.map(each::with).orElse(each);
    var spread = loss.spread(bodies.before());
    figures.add(all.with(new Comparison(before.bodies(), before.percent(), spread)));
    var weight = month.part().fraction();
    var weightBefore = Optional.of(before.part().fraction()).filter(w -> before.isKnown());
    figures.add(
        all.with(FigureName.weightOf(loss), weight)
            .with(Comparison.of(before.bodies(), weightBefore)));
    // Money of different owners is never added.
    records
        .worth(species, weight)
        .filter(money -> whose.isPresent())
        .map(money -> money.fraction(records.settings().currency()))
        .map(value -> all.with(FigureName.valueOf(loss), value))
        .map(figure -> figure.with(Comparison.of(before.bodies(), Optional.empty())))
        .ifPresent(figures::add);
  }
}
