package gambrel.insight.month.change;

import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.statistics.DayValues.Effect;
import gambrel.insight.statistics.Moments;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.shop.Step;
import java.time.LocalDate;
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
 * @param falseAlarms the rate of false alarms that the search leaves to one explanation
 */
record ChangeExplanation(
    Suspect suspect,
    Set<String> names,
    LocalDate since,
    List<Part> parts,
    Effect effect,
    double falseAlarms) {
  /** The least exposure of a body that counts as concerned. */
  private static final double LEAST = 0.05;

  /** The least number of the month's bodies that must be concerned; of a day of kill one less. */
  private static final int LEAST_BODIES = 3;

  /**
   * A figure that is changed.
   *
   * @param series the bodies and their values
   * @param exposure how far each body is exposed; 1 in full
   * @param effect by how much the figure rose for a unit of exposure
   */
  record Part(Series series, double[] exposure, Effect effect) {
    /** The places of the month's bodies that are exposed. */
    IntStream places() {
      return IntStream.range(series.baseline(), exposure.length)
          .filter(i -> Math.abs(exposure[i]) > LEAST);
    }

    /** The figure; empty if no body of the month is exposed, or if nothing can be told of it. */
    static Optional<Part> of(Series series, double[] exposure) {
      return series
          .values()
          .effect(exposure)
          .map(effect -> new Part(series, exposure, effect))
          .filter(part -> part.places().findAny().isPresent());
    }
  }

  /** The explanation; empty if the figures do not show it, or if it is about too few bodies. */
  static Optional<ChangeExplanation> of(Suspect suspect, LocalDate since, List<Part> parts) {
    return Optional.of(parts.stream().map(Part::effect).toList())
        .filter(effects -> !effects.isEmpty())
        .map(Effect::of)
        .map(e -> new ChangeExplanation(suspect, Set.of(suspect.level()), since, parts, e, 0))
        .filter(one -> one.bodies().size() >= LEAST_BODIES - (one.factor() == Factor.KILL ? 1 : 0));
  }

  /** The month's bodies concerned, in the order of the first part that has them. */
  List<MonthBody> bodies() {
    return parts.stream()
        .flatMap(part -> part.places().mapToObj(part.series().bodies()::get))
        .distinct()
        .toList();
  }

  /** The same with other names and another rate of false alarms. */
  ChangeExplanation with(Set<String> others, double rate) {
    return new ChangeExplanation(suspect, others, since, parts, effect, rate);
  }

  /** What t must exceed. */
  double limit() {
    return Moments.studentsAbove(effect.degrees(), falseAlarms);
  }

  /** Whether the figures show it at that rate. */
  boolean isSure() {
    return effect.strength() > limit();
  }

  /** Whether it accuses a scale that never weighed some of the bodies of another change. */
  boolean isOfScaleOfSome(ChangeExplanation other) {
    return factor() == Factor.SCALE
        && explains(other)
        && other.parts.stream()
            .anyMatch(part -> part.places().anyMatch(i -> suspect.misses(part.series(), i)));
  }

  /** What kind of thing is accused. */
  Factor factor() {
    return suspect.factor();
  }

  /** How well it fits: the square of t. */
  double fit() {
    return effect.strength() * effect.strength();
  }

  /** Whether it makes the figures worse, or accuses a scale. */
  boolean isWorse() {
    boolean moreIsBetter = changes(Measure.DRESSING) || changes(Measure.HOME);
    return factor() == Factor.SCALE || isMore() != moreIsBetter;
  }

  /** Whether the figures rose. */
  boolean isMore() {
    return effect.size() > 0;
  }

  /** What a scale that it accuses makes of the loss of a batch, in per cent of what went in. */
  double explains(BatchBalance batch) {
    double moved =
        batch.weighings().stream()
            .filter(w -> factor() == Factor.SCALE && w.scale().id().equals(suspect.level()))
            .filter(w -> !w.date().isBefore(since))
            .mapToDouble(w -> w.net().hundredThousandths() * (w.step() == Step.PACK ? 1 : -1))
            .sum();
    return effect.mean() * moved / batch.lossShare().orElseThrow().whole().hundredThousandths();
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
