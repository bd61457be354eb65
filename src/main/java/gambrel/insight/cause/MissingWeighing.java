package gambrel.insight.cause;

import gambrel.insight.cause.Makeup.Product;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.SideLabels;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Step;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds weighings that were not made. There is no row to correct, so the suggestion says what to
 * look for.
 */
record MissingWeighing(RowIndex rows, BodyFacts suspect) {
  private static final long OF_A_BIN = 1300;
  private static final long OF_A_PACK = 1100;
  private static final long OF_A_PART = 300;

  /** The loss with both sides may be so many per cent, since sides differ. */
  private static final BigFraction SIDES_DIFFER = BigFraction.of(3);

  /**
   * A suggestion for each product of which one weighing more would explain a loss above the limit:
   * of the body there is less of it than of others, by as much as its loss is too high.
   */
  Stream<Examiner.Scored> products() {
    if (suspect.testedLoss().isEmpty() || !suspect.faultCodes().contains(ReasonCode.LOSS_HIGH)) {
      return Stream.empty();
    }
    var habits = rows.usual.habits(suspect.id).byProduct();
    var missing = suspect.lossBeyondUsual(BodyFacts.Shift.NONE);
    var products = habits.keySet().stream().filter(product -> product.step() != Step.TUB);
    return Groups.inOrder(products, Product::step).values().stream()
        .flatMap(
            alike -> alike.stream().map(p -> missing(p, habits.get(p), missing, alike.size())));
  }

  /** One weighing of a product that was not made, one of {@code alike} products. */
  private Examiner.Scored missing(Product product, Usual.Habit habit, Weight missing, int alike) {
    boolean bin = product.step() == Step.BIN;
    long weight = missing.hundredThousandths();
    var shift = BodyFacts.Shift.of(product, weight);
    long gain =
        suspect.strain(BodyFacts.Shift.NONE)
            - suspect.strain(shift)
            + suspect.productStrain()
            - suspect.productStrain(shift)
            - habit.each().strain(weight, Usual.PRODUCT_KNEE)
            - (bin ? OF_A_BIN : OF_A_PACK)
            - Odds.of(alike);
    var found =
        suspect.balance.boning().flatMap(w -> Usual.share(suspect.makeup().weight(product), w));
    var cause = bin ? Cause.BIN_NOT_WEIGHED : Cause.PACK_NOT_WEIGHED;
    var evidence =
        Phrase.of("LIKELY_CAUSE." + cause)
            .with(
                "kind",
                bin
                    ? Phrase.of("KIND." + product.item().toUpperCase(Locale.ROOT))
                    : EvidenceText.item(suspect.balance.weighings().tree(), product.item())
                        .orElse(new Value.Text(product.item())))
            .with("found", percent(found.orElse(0L)))
            .with("expected", percent(habit.share().middle()))
            .with("missing", missing, rows.unit());
    var weighed = loss().map(l -> new Share(l.part().minus(missing), l.whole()));
    return scored(cause, product.item(), evidence, gain, weighed);
  }

  private Optional<Share> loss() {
    return suspect.balance.shares().cuttingLoss();
  }

  /** A part of a whole as a value of a sentence. */
  static Value percent(long millionths) {
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
    long shrink = rows.usual.chill(suspect.species).middle();
    var kept = BigFraction.ONE.subtract(BigFraction.of(shrink, 1_000_000));
    if (hot.compareTo(cold) <= 0) {
      var missing = Weight.of(cold.fraction().divide(kept)).minus(hot);
      return atOneStep(Step.HOT, missing, 0, suspect.lossStrain(BodyFacts.Shift.NONE));
    }
    var missing = Weight.of(hot.fraction().multiply(kept)).minus(cold);
    boolean countsIn =
        suspect.balance.rail().boning().pieces().stream()
            .allMatch(piece -> piece.step() == Step.COLD);
    long into = countsIn ? missing.hundredThousandths() : 0;
    long strain = suspect.lossStrain(new BodyFacts.Shift(0, into, 0, 0, Map.of()));
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
    return Optional.of(part(missing, new Weight(into), evidence));
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
    return Optional.of(part(side, side, evidence));
  }

  /** The suggestion for a part that weighs {@code missing}; so much of it adds to W. */
  private Examiner.Scored part(Weight missing, Weight into, Phrase evidence) {
    var weighing = evidence.with("weight", missing, rows.unit());
    var weighed = loss().map(l -> new Share(l.part().plus(into), l.whole().plus(into)));
    long gain = suspect.strain() - OF_A_PART;
    return scored(Cause.PART_NOT_WEIGHED, "", weighing, gain, weighed);
  }

  private Examiner.Scored scored(
      Cause cause, String kind, Phrase evidence, long gain, Optional<Share> lossAfter) {
    var saying = evidence.with("body", suspect.id);
    var notice = Notice.of(NoticeCode.LIKELY_CAUSE, saying, Place.NONE).aboutBody(suspect.id);
    return new Examiner.Scored(
        new Suggestion(cause, notice, List.of(), List.of(), loss(), lossAfter), gain, cause + kind);
  }
}
