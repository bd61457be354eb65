package gambrel.insight.cause;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.SideLabels;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Step;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds a hung part that was weighed at one step and not at another, or at neither. */
final class MissingPart {
  private static final long PENALTY = 100;

  /** The chill shrink where too few bodies are known, in millionths of the hot weight. */
  private static final long CHILL = 20_000;

  /** The loss with both sides may be so many per cent, since sides differ. */
  private static final BigFraction SIDES_DIFFER = BigFraction.of(3);

  private final RowIndex rows;
  private final BodyFacts suspect;
  private final BodyBalance balance;

  MissingPart(RowIndex rows, BodyFacts suspect) {
    this.rows = rows;
    this.suspect = suspect;
    this.balance = suspect.balance();
  }

  /** The part that was not weighed; empty if a missing part does not explain the figures. */
  Optional<ScoredSuggestion> suggestion() {
    var codes = Faults.codes(suspect);
    if (balance.hot().isEmpty() || balance.cold().isEmpty()) {
      return Optional.empty();
    }
    if (codes.contains(ReasonCode.PARTS_MISSING)) {
      return atOneStep();
    }
    return codes.equals(Set.of(ReasonCode.LOSS_NEGATIVE)) ? otherSide() : Optional.empty();
  }

  /** The lighter step lacks what is expected from the other one and the usual chill shrink. */
  private Optional<ScoredSuggestion> atOneStep() {
    var hot = balance.hot().orElseThrow();
    var cold = balance.cold().orElseThrow();
    long shrink = rows.usual().chill(suspect.species()).map(UsualRange::middle).orElse(CHILL);
    var kept = BigFraction.ONE.subtract(BigFraction.of(shrink, 1_000_000));
    if (hot.compareTo(cold) <= 0) {
      var missing = Weight.of(cold.fraction().divide(kept)).minus(hot);
      return atOneStep(Step.HOT, missing, suspect.strain());
    }
    var missing = Weight.of(hot.fraction().multiply(kept)).minus(cold);
    boolean countsIn =
        balance.rail().boning().pieces().stream().allMatch(piece -> piece.step() == Step.COLD);
    long into = countsIn ? missing.hundredThousandths() : 0;
    return atOneStep(Step.COLD, missing, suspect.strain(new BodyFacts.Shift(0, into, 0, 0)));
  }

  private Optional<ScoredSuggestion> atOneStep(Step step, Weight missing, long strain) {
    if (missing.hundredThousandths() <= 0 || strain > Faults.BALANCED) {
      return Optional.empty();
    }
    var parts =
        Faults.of(suspect).stream()
            .filter(reason -> reason.code() == ReasonCode.PARTS_MISSING)
            .findFirst()
            .orElseThrow();
    var evidence =
        Phrase.of("LIKELY_CAUSE.PART_NOT_WEIGHED." + step)
            .with("hot", parts.value("hot"))
            .with("cold", parts.value("cold"));
    return Optional.of(scored(missing, evidence, Optional.empty(), strain));
  }

  /** One side was weighed hot and cold, and two were cut. */
  private Optional<ScoredSuggestion> otherSide() {
    var pieces = balance.rail().boning().pieces();
    boolean oneSide =
        balance.weighings().body().head() == 1
            && pieces.size() == 1
            && SideLabels.plain(pieces.get(0).item()).equals(CutTree.SIDE)
            && pieces.get(0).number() == 1;
    if (!oneSide || suspect.testedLoss().isEmpty()) {
      return Optional.empty();
    }
    var side = balance.boning().orElse(Weight.ZERO);
    var loss = suspect.testedLoss().get();
    var withBoth = new Share(loss.part().plus(side), side.plus(side));
    if (withBoth.percent().abs().compareTo(SIDES_DIFFER) > 0) {
      return Optional.empty();
    }
    var evidence =
        Phrase.of("LIKELY_CAUSE.PART_NOT_WEIGHED.OTHER_SIDE")
            .with("percent", new Value.Percent(loss.rest().percent()));
    return Optional.of(scored(side, evidence, Optional.of(withBoth), 0));
  }

  private ScoredSuggestion scored(
      Weight missing, Phrase evidence, Optional<Share> lossAfter, long strain) {
    var phrase = evidence.with("body", suspect.id()).with("weight", missing, rows.unit());
    return new ScoredSuggestion(
        Suggestion.missing(suspect, Cause.PART_NOT_WEIGHED, phrase, lossAfter),
        PENALTY + strain - suspect.strain(),
        Cause.PART_NOT_WEIGHED.id());
  }
}
