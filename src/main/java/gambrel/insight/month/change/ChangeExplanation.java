package gambrel.insight.month.change;

import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.statistics.DayValues.Effect;
import gambrel.insight.statistics.Moments;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * An explanation of a change, and how well it fits.
 *
 * @param factor what kind of thing is accused
 * @param level which one
 * @param since from which day on
 * @param parts the figures that it changes
 * @param effect by how much, for a unit of exposure
 * @param limit what its strength must exceed, so that the search as a whole keeps its rate
 */
record ChangeExplanation(
    Factor factor, String level, LocalDate since, List<Part> parts, Effect effect, double limit) {
  /** The least exposure of a body that counts as concerned. */
  private static final double LEAST = 0.05;

  /** The least number of the month's bodies that must be concerned. */
  static final int LEAST_BODIES = 3;

  /**
   * A figure that is changed.
   *
   * @param series the bodies and their values
   * @param exposure how far each body is exposed; 1 in full
   */
  record Part(Series series, double[] exposure) {
    /** The places of the month's bodies that are exposed. */
    IntStream places() {
      return IntStream.range(series.baseline(), exposure.length)
          .filter(i -> Math.abs(exposure[i]) > LEAST);
    }

    private Optional<Effect> effect() {
      return places().findAny().isPresent() ? series.values().effect(exposure) : Optional.empty();
    }
  }

  /** The explanation; empty if the figures do not show it, or if it is about too few bodies. */
  static Optional<ChangeExplanation> of(
      Factor factor, String level, LocalDate since, List<Part> all) {
    var parts = new ArrayList<Part>();
    var effects = new ArrayList<Effect>();
    for (var part : all) {
      part.effect()
          .ifPresent(
              effect -> {
                parts.add(part);
                effects.add(effect);
              });
    }
    return Optional.of(parts)
        .filter(some -> !some.isEmpty())
        .map(some -> new ChangeExplanation(factor, level, since, some, Effect.of(effects), 0))
        .filter(explanation -> explanation.bodies().size() >= LEAST_BODIES);
  }

  /** The month's bodies concerned, in the order of the first part that has them. */
  List<MonthBody> bodies() {
    return parts.stream()
        .flatMap(part -> part.places().mapToObj(part.series().bodies()::get))
        .distinct()
        .toList();
  }

  /** The same with the limit of a search. */
  ChangeExplanation of(int explanations, double falseAlarms) {
    double t = Moments.studentsAbove(effect.degrees(), falseAlarms / explanations / 2);
    return new ChangeExplanation(factor, level, since, parts, effect, t);
  }

  boolean isBeyondLimit() {
    return effect.strength() > limit;
  }

  /** Whether the figures rose. */
  boolean isMore() {
    return effect.size() > 0;
  }

  /** What it makes of the value of a body of a series. */
  double explains(Series series, int place) {
    return parts.stream()
        .filter(part -> part.series() == series)
        .mapToDouble(part -> effect.mean() * part.exposure()[place])
        .sum();
  }

  /** Whether a measure is among those that it changes. */
  boolean changes(Measure measure) {
    return parts.stream().anyMatch(part -> part.series().measure() == measure);
  }
}
