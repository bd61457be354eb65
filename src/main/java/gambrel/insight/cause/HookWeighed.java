package gambrel.insight.cause;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds a hook, gambrel or roller that hung on the scale at one step and not at the other: one of
 * known weight; else one whose weight follows from the usual chill shrink.
 */
record HookWeighed(RowIndex rows, BodyFacts suspect) {
  private static final long KNOWN = 500;
  private static final long UNKNOWN = 1400;

  /** Parts of a body shrink alike; so many millionths of difference cost 1. */
  private static final long UNEVEN = 100;

  private static final long MOST_UNEVEN = 300;

  private static final int HEAVIEST = 8;

  Stream<Candidate> candidates() {
    return Stream.of(Step.HOT, Step.COLD, Step.AGED).flatMap(this::hooks);
  }

  private Stream<Candidate> hooks(Step step) {
    var all = suspect.balance.weighings().of(step).stream().filter(rows::isUncorrected).toList();
    if (all.isEmpty() || all.stream().anyMatch(this::isTared)) {
      return Stream.empty();
    }
    return Stream.concat(all.stream().map(List::of), Stream.of(all).filter(some -> some.size() > 1))
        .flatMap(
            some ->
                Stream.concat(
                    known(all).flatMap(tare -> hook(tare, some, all).stream()),
                    unknown(some, all).stream()));
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

  /** The rows less what makes the chill shrink as usual; empty if no hook weighs so much. */
  private Optional<Candidate> unknown(List<Weighing> some, List<Weighing> all) {
    var row = some.get(0);
    return rows.usual
        .knownChill(suspect.species)
        .filter(range -> row.step() != Step.AGED)
        .filter(range -> suspect.balance.shares().chillShrink().isPresent())
        .filter(range -> rows.usual.isChilledAsOthers(suspect.balance))
        .flatMap(
            range ->
                Optional.of(excess(row.step(), range.middle()).divide(some.size()))
                    .map(each -> Exact.round(each, Weight.OUTPUT_DECIMALS))
                    .map(each -> rows.unit().convert(each, row.unit()))
                    .filter(each -> Tares.isEmptyWeight(each, row.unit(), HEAVIEST))
                    .map(each -> Exact.round(each, 1).setScale(2))
                    .flatMap(each -> candidate(each, some, all, UNKNOWN))
                    .map(Candidate::inexact)
                    .map(candidate -> candidate.variant("UNKNOWN"))
                    .map(
                        candidate ->
                            candidate.with("expected", MissingWeighing.percent(range.middle()))));
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
    var step = all.get(0).step() == Step.COLD ? Step.HOT : Step.COLD;
    var other = suspect.balance.weighings().of(step);
    if (all.size() != other.size()) {
      return 0;
    }
    var then = changes.stream().collect(Collectors.toMap(RowChange::weighing, RowChange::net));
    var nets =
        all.stream()
            .map(row -> then.getOrDefault(row, row.net().hundredThousandths()))
            .sorted()
            .toList();
    var others = other.stream().map(w -> w.net().hundredThousandths()).sorted().toList();
    var shares =
        IntStream.range(0, nets.size())
            .mapToLong(i -> nets.get(i) * 1_000_000 / Math.max(1, others.get(i)))
            .summaryStatistics();
    return Math.min(MOST_UNEVEN, (shares.getMax() - shares.getMin()) / UNEVEN);
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
