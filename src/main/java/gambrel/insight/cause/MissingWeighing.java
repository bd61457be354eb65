package gambrel.insight.cause;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.SideLabels;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Step;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds weighings that were not made. There is no row to correct, so the suggestion says what to
 * look for.
 */
record MissingWeighing(RowIndex rows, BodyFacts suspect) {
  private static final long BIN_PENALTY = 300;
  private static final long PART_PENALTY = 100;

  /** A share so many spreads below the usual is far below it. */
  private static final long SPREADS_BELOW = 2;

  /** The excess of the loss equals what the bins lack within three spreads of both together. */
  private static final long AGREE = Usual.Range.strainOf(3);

  /** The chill shrink where too few bodies are known, in millionths of the hot weight. */
  private static final long CHILL = 20_000;

  /** The loss with both sides may be so many per cent, since sides differ. */
  private static final BigFraction SIDES_DIFFER = BigFraction.of(3);

  /**
   * A suggestion for each kind of bin that would explain a loss above the limit: the loss is as
   * high as bone, fat or waste is low.
   */
  Stream<Examiner.Scored> bins() {
    return suspect.testedLoss().isPresent() && suspect.faultCodes().contains(ReasonCode.LOSS_HIGH)
        ? Stream.of(Kind.BONE, Kind.FAT, Kind.WASTE)
            .flatMap(
                kind ->
                    rows
                        .usual
                        .bin(suspect.species, kind)
                        .flatMap(usual -> bin(kind, usual))
                        .stream())
        : Stream.empty();
  }

  private Optional<Examiner.Scored> bin(Kind kind, Usual.Range usual) {
    var lossRange = rows.usual.loss(suspect.species);
    var loss = suspect.testedLoss().orElseThrow().part().fraction();
    var missing = loss.subtract(ofLimit(lossRange.middle()));
    long found = Usual.binned(suspect.balance, kind).orElse(0L);
    long lacking = usual.middle() - found;
    long excess = ofBoning(missing);
    long strain =
        new Usual.Range(lacking, usual.spread() + ofBoning(ofLimit(lossRange.spread())))
            .strain(excess);
    if (lacking < SPREADS_BELOW * usual.spread() || excess <= 0 || strain > AGREE) {
      return Optional.empty();
    }
    var evidence =
        Phrase.of("LIKELY_CAUSE.BIN_NOT_WEIGHED")
            .with("kind", Phrase.of("KIND." + kind))
            .with("found", percent(found))
            .with("expected", percent(usual.middle()))
            .with("missing", Weight.of(missing), rows.unit());
    var binned = loss().map(l -> new Share(l.part().minus(Weight.of(missing)), l.whole()));
    return Optional.of(
        scored(Cause.BIN_NOT_WEIGHED, kind.name(), evidence, BIN_PENALTY + strain, binned));
  }

  private Optional<Share> loss() {
    return suspect.balance.shares().cuttingLoss();
  }

  /** So many millionths of the loss that the shop allows this body, as a weight. */
  private BigFraction ofLimit(long millionths) {
    return LossLimit.of(rows.usual.settings, suspect.balance)
        .multiply(BigFraction.of(millionths, 1_000_000));
  }

  /** A weight in millionths of the weight into the boning room. */
  private long ofBoning(BigFraction weight) {
    return Usual.millionths(weight, suspect.balance.boning().orElseThrow().fraction()).orElse(0L);
  }

  private static Value percent(long millionths) {
    return new Value.Percent(BigFraction.of(millionths, 1_000_000).multiply(Exact.HUNDRED));
  }

  /**
   * A hung part that was weighed at one step and not at another, or at neither; empty if a missing
   * part does not explain the figures.
   */
  Optional<Examiner.Scored> part() {
    var codes = suspect.faultCodes();
    if (suspect.balance.hot().isEmpty() || suspect.balance.cold().isEmpty()) {
      return Optional.empty();
    }
    if (codes.contains(ReasonCode.PARTS_MISSING)) {
      return atOneStep(suspect.balance.hot().get(), suspect.balance.cold().get());
    }
    return codes.equals(Set.of(ReasonCode.LOSS_NEGATIVE)) ? otherSide() : Optional.empty();
  }

  /** The lighter step lacks what is expected from the other one and the usual chill shrink. */
  private Optional<Examiner.Scored> atOneStep(Weight hot, Weight cold) {
    long shrink = rows.usual.chill(suspect.species).map(Usual.Range::middle).orElse(CHILL);
    var kept = BigFraction.ONE.subtract(BigFraction.of(shrink, 1_000_000));
    if (hot.compareTo(cold) <= 0) {
      var missing = Weight.of(cold.fraction().divide(kept)).minus(hot);
      return atOneStep(Step.HOT, missing, 0, suspect.strain());
    }
    var missing = Weight.of(hot.fraction().multiply(kept)).minus(cold);
    boolean countsIn =
        suspect.balance.rail().boning().pieces().stream()
            .allMatch(piece -> piece.step() == Step.COLD);
    long into = countsIn ? missing.hundredThousandths() : 0;
    long strain = suspect.strain(new BodyFacts.Shift(0, into, 0, 0));
    return atOneStep(Step.COLD, missing, into, strain);
  }

  private Optional<Examiner.Scored> atOneStep(Step step, Weight missing, long into, long strain) {
    if (missing.hundredThousandths() <= 0 || strain > BodyFacts.BALANCED) {
      return Optional.empty();
    }
    var parts =
        suspect.faults().stream()
            .filter(reason -> reason.code() == ReasonCode.PARTS_MISSING)
            .findFirst()
            .orElseThrow();
    var evidence =
        Phrase.of("LIKELY_CAUSE.PART_NOT_WEIGHED." + step)
            .with("hot", parts.value("hot"))
            .with("cold", parts.value("cold"));
    return Optional.of(part(missing, new Weight(into), evidence, strain));
  }

  /** One side was weighed hot and cold, and two were cut. */
  private Optional<Examiner.Scored> otherSide() {
    var pieces = suspect.balance.rail().boning().pieces();
    boolean oneSide =
        suspect.balance.weighings().body().head() == 1
            && pieces.size() == 1
            && SideLabels.plain(pieces.get(0).item()).equals(CutTree.SIDE)
            && pieces.get(0).number() == 1;
    if (!oneSide || suspect.testedLoss().isEmpty()) {
      return Optional.empty();
    }
    var side = suspect.balance.boning().orElse(Weight.ZERO);
    var loss = suspect.testedLoss().get();
    var withBoth = new Share(loss.part().plus(side), side.plus(side));
    if (withBoth.percent().abs().compareTo(SIDES_DIFFER) > 0) {
      return Optional.empty();
    }
    var evidence =
        Phrase.of("LIKELY_CAUSE.PART_NOT_WEIGHED.OTHER_SIDE")
            .with("percent", new Value.Percent(loss.rest().percent()));
    return Optional.of(part(side, side, evidence, 0));
  }

  /** The suggestion for a part that weighs {@code missing}; so much of it adds to W. */
  private Examiner.Scored part(Weight missing, Weight into, Phrase evidence, long strain) {
    var weighing = evidence.with("weight", missing, rows.unit());
    var weighed = loss().map(l -> new Share(l.part().plus(into), l.whole().plus(into)));
    return scored(Cause.PART_NOT_WEIGHED, "", weighing, PART_PENALTY + strain, weighed);
  }

  private Examiner.Scored scored(
      Cause cause, String kind, Phrase evidence, long cost, Optional<Share> lossAfter) {
    var saying = evidence.with("body", suspect.id);
    var notice = Notice.of(NoticeCode.LIKELY_CAUSE, saying, Place.NONE).aboutBody(suspect.id);
    return new Examiner.Scored(
        new Suggestion(cause, notice, List.of(), List.of(), loss(), lossAfter),
        cost - suspect.strain(),
        cause + kind);
  }
}
