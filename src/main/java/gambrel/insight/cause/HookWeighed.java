package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds a hook, gambrel or roller that hung on the scale at one step and not at the other: one of
 * known weight; else one whose weight follows from the usual chill shrink. One that hung at every
 * step weighs what the loss is too high by. A body that dried as much loses the same; only one with
 * a hook dresses too well.
 */
record HookWeighed(RowIndex rows, BodyFacts suspect) {
  private static final long KNOWN = 500;
  private static final long UNKNOWN = 1400;
  private static final long EVERY_STEP = 1500;

  /** Parts of a body shrink alike; so many millionths of difference cost 1. */
  private static final long UNEVEN = 100;

  private static final long MOST_UNEVEN = 300;

  private static final int HEAVIEST = 8;

  Stream<Candidate> candidates() {
    return Stream.concat(
        Stream.of(Step.HOT, Step.COLD, Step.AGED).flatMap(this::hooks), atEveryStep());
  }

  /** The uncorrected weighings of a step; none if one is tared. */
  private List<Weighing> gross(Step step) {
    var all = of(step).stream().filter(rows::isUncorrected).toList();
    return all.stream().anyMatch(this::isTared) ? List.of() : all;
  }

  private Stream<Candidate> hooks(Step step) {
    var all = gross(step);
    if (all.isEmpty()) {
      return Stream.empty();
    }
    return Stream.concat(all.stream().map(List::of), Stream.of(all).filter(some -> some.size() > 1))
        .flatMap(
            some ->
                Stream.concat(
                    known(all).flatMap(tare -> hook(tare, some, all).stream()),
                    unknown(some, all)));
  }

  private List<Weighing> of(Step step) {
    return suspect.balance.weighings().of(step);
  }

  /** The rows less a hook of known weight each; empty if it weighs more than one of them. */
  private Optional<Candidate> hook(BigDecimal tare, List<Weighing> some, List<Weighing> all) {
    boolean shrinks = suspect.balance.shares().chillShrink().isPresent();
    return candidate(tare, some, all, KNOWN)
        .map(candidate -> shrinks ? candidate : candidate.variant("NO_SHRINK"));
  }

  private Optional<Candidate> candidate(
      BigDecimal tare, List<Weighing> some, List<Weighing> all, long prior) {
    var changes = some.stream().flatMap(row -> rows.tares.take(row, tare).stream()).toList();
    return changes.size() < some.size()
        ? Optional.empty()
        : Optional.of(
            Candidate.of(Cause.HOOK, changes, prior)
                .witnessed(-unevenness(changes, all))
                .with("witness", new Value.Shown(tare, some.get(0).unit())));
  }

  /** Rows less a hook of a weight that no file says; none if no hook weighs so much. */
  private Stream<Candidate> guessed(
      BigFraction each, List<Weighing> some, List<Weighing> all, long prior) {
    return rows
        .tares
        .guessed(each, some.get(0).unit(), HEAVIEST)
        .flatMap(weight -> candidate(weight, some, all, prior))
        .map(Candidate::inexact)
        .stream();
  }

  private static Candidate expected(Candidate candidate, String variant, long usual) {
    return candidate.variant(variant).with("expected", MissingWeighing.percent(usual));
  }

  /** The rows less what makes the chill shrink as usual. */
  private Stream<Candidate> unknown(List<Weighing> some, List<Weighing> all) {
    var step = some.get(0).step();
    return rows
        .usual
        .knownChill(suspect.species)
        .map(Usual.Range::middle)
        .filter(shrink -> step != Step.AGED)
        .filter(shrink -> suspect.balance.shares().chillShrink().isPresent())
        .filter(shrink -> rows.usual.isChilledAsOthers(suspect.balance))
        .stream()
        .flatMap(
            shrink ->
                guessed(excess(step, shrink).divide(some.size()), some, all, UNKNOWN)
                    .map(one -> expected(one, "UNKNOWN", shrink)));
  }

  /** A part at each step less what the loss is too high by; none if it was weighed aged too. */
  private Stream<Candidate> atEveryStep() {
    var usual = rows.usual.dressing(suspect.species);
    var steps = Stream.of(Step.HOT, Step.COLD).filter(step -> !of(step).isEmpty());
    var hung = steps.map(this::gross).toList();
    var parts = hung.stream().mapToInt(List::size).summaryStatistics();
    if (suspect.testedLoss().isEmpty()
        || usual.isEmpty()
        || !of(Step.AGED).isEmpty()
        || parts.getMin() != parts.getMax()) {
      return Stream.empty();
    }
    return IntStream.range(0, parts.getMax())
        .mapToObj(part -> hung.stream().map(step -> step.get(part)).toList())
        .flatMap(some -> guessed(suspect.lossBeyondUsual(), some, hung.get(0), EVERY_STEP))
        .map(one -> expected(one, "EVERY_STEP", usual.get().middle()));
  }

  /** By how much the suspect is too heavy at one step for the other and the usual shrink. */
  private BigFraction excess(Step step, long shrink) {
    var kept = BigFraction.ONE.subtract(BigFraction.of(shrink, 1_000_000));
    var hot = suspect.balance.hot().orElseThrow().fraction();
    var cold = suspect.balance.cold().orElseThrow().fraction();
    return step == Step.HOT ? hot.subtract(cold.divide(kept)) : cold.subtract(hot.multiply(kept));
  }

  /** How differently the parts would have shrunk from one step to the other. */
  private long unevenness(List<RowChange> changes, List<Weighing> all) {
    var other = of(all.get(0).step() == Step.COLD ? Step.HOT : Step.COLD);
    if (all.size() != other.size()) {
      return 0;
    }
    var then = changes.stream().collect(Collectors.toMap(RowChange::weighing, RowChange::net));
    var nets = nets(all, then);
    var others = nets(other, then);
    var shares =
        IntStream.range(0, nets.size())
            .mapToLong(i -> nets.get(i) * 1_000_000 / Math.max(1, others.get(i)))
            .summaryStatistics();
    return Math.min(MOST_UNEVEN, (shares.getMax() - shares.getMin()) / UNEVEN);
  }

  private static List<Long> nets(List<Weighing> weighings, Map<Weighing, Long> then) {
    return weighings.stream()
        .map(row -> then.getOrDefault(row, row.net().hundredThousandths()))
        .sorted()
        .toList();
  }

  /** Known hook weights: the tares that rows of these codes show, and those of rail codes. */
  private Stream<BigDecimal> known(List<Weighing> all) {
    var lacking = all.stream().flatMap(w -> rows.tares.lacking(w).stream()).map(l -> l.tare());
    var ofCodes =
        rows.night.shop().codes().stream()
            .filter(code -> code.step().isRail())
            .flatMap(code -> rows.tares.in(all.get(0).unit(), code).stream());
    return Stream.concat(lacking, ofCodes).map(Tares::plain).distinct();
  }

  /** Whether a row shows a tare, or comes gross and has its code's taken off. */
  private boolean isTared(Weighing row) {
    return rows.tares.lacking(row).isEmpty()
        && (rows.cell(row, Field.NET).isEmpty() || !rows.cell(row, Field.TARE).isEmpty());
  }
}
