package gambrel.insight.month.change;

import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.statistics.DayValues.Effect;
import gambrel.insight.statistics.Moments;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * An explanation of a change, and how well it fits.
 *
 * @param suspect what is accused
 * @param names the things of that kind that explain it about as well, this one among them
 * @param since from which day on
 * @param parts the figures that it changes
 * @param effect by how much, for a unit of exposure
 * @param limit what its strength must exceed, so that the search as a whole keeps its rate
 */
record ChangeExplanation(
    Suspect suspect,
    Set<String> names,
    LocalDate since,
    List<Part> parts,
    Effect effect,
    double limit) {
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
  static Optional<ChangeExplanation> of(Suspect suspect, LocalDate since, List<Part> all) {
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
        .map(
            some ->
                new ChangeExplanation(
                    suspect, Set.of(suspect.level()), since, some, Effect.of(effects), 0))
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
  ChangeExplanation of(long tests, double falseAlarms) {
    double t = Moments.studentsAbove(effect.degrees(), falseAlarms / tests);
    return new ChangeExplanation(suspect, names, since, parts, effect, t);
  }

  /** The same with other names. */
  ChangeExplanation with(Set<String> others) {
    return new ChangeExplanation(suspect, others, since, parts, effect, limit);
  }

  /** What kind of thing is accused. */
  Factor factor() {
    return suspect.factor();
  }

  /** How well it fits: the square of t. */
  double fit() {
    return effect.strength() * effect.strength();
  }

  boolean isBeyondLimit() {
    return effect.strength() > limit;
  }

  /** Whether it makes the figures worse, or accuses a scale. */
  boolean isWorse() {
    return factor() == Factor.SCALE || isMore() != parts.get(0).series().measure().isBetterHigher();
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

  /** Whether another need not be told besides: two days of kill are two things. */
  boolean explains(ChangeExplanation other) {
    boolean days = factor() == Factor.KILL && other.factor() == Factor.KILL;
    return days
        ? bodies().stream().anyMatch(other.bodies()::contains)
        : other.parts.stream().anyMatch(part -> changes(part.series().measure()));
  }

  /** Whether a measure is among those that it changes. */
  boolean changes(Measure measure) {
    return parts.stream().anyMatch(part -> part.series().measure() == measure);
  }
}
