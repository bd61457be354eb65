package gambrel.insight.cause;

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
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds a hung part that was weighed at one step and not at another, or at neither. */
final class MissingPart {
  private static final long PENALTY = 100;

  /** A guess from the other side is good to so many per cent of both, since sides differ. */
  private static final BigFraction SIDES_DIFFER = BigFraction.of(3);

  private final RowIndex traces;
  private final EvidenceValues speech;

  MissingPart(RowIndex traces) {
    this.traces = traces;
    this.speech = new EvidenceValues(traces.night());
  }

  Optional<ScoredSuggestion> fit(BodyFacts suspect) {
    var codes =
        Faults.of(suspect.account()).stream().map(r -> r.code()).collect(Collectors.toSet());
    var balance = suspect.balance();
    boolean both = balance.hot().isPresent() && balance.cold().isPresent();
    if (codes.contains(ReasonCode.PARTS_MISSING) && both) {
      return ofOneStep(suspect);
    }
    if (codes.equals(Set.of(ReasonCode.LOSS_NEGATIVE)) && both) {
      return otherSide(suspect);
    }
    return Optional.empty();
  }

  /** The lighter step lacks what the other one, with the usual chill shrink, lets expect of it. */
  private Optional<ScoredSuggestion> ofOneStep(BodyFacts suspect) {
    var balance = suspect.balance();
    var hot = balance.hot().orElseThrow();
    var cold = balance.cold().orElseThrow();
    var kept = BigFraction.ONE.subtract(chill(suspect));
    if (hot.compareTo(cold) <= 0) {
      var missing = Weight.of(cold.fraction().divide(kept)).minus(hot);
      return fit(suspect, Step.HOT, missing, suspect.strain());
    }
    var missing = Weight.of(hot.fraction().multiply(kept)).minus(cold);
    boolean countsIn =
        balance.rail().boning().pieces().stream().allMatch(piece -> piece.step() == Step.COLD);
    long into = countsIn ? missing.hundredThousandths() : 0;
    return fit(suspect, Step.COLD, missing, suspect.strain(new BodyFacts.Shift(0, into, 0, 0)));
  }

  private BigFraction chill(BodyFacts suspect) {
    long middle =
        traces
            .usual()
            .chill(suspect.account().body().species())
            .map(UsualRange::middle)
            .orElse(20_000L);
    return BigFraction.of(middle, 1_000_000);
  }

  private Optional<ScoredSuggestion> fit(
      BodyFacts suspect, Step step, Weight missing, long strain) {
    if (missing.hundredThousandths() <= 0 || strain > Relevance.CLOSED) {
      return Optional.empty();
    }
    var parts =
        Faults.of(suspect.account()).stream()
            .filter(reason -> reason.code() == ReasonCode.PARTS_MISSING)
            .findFirst()
            .orElseThrow();
    var evidence =
        Phrase.of("LIKELY_CAUSE.PART_NOT_WEIGHED." + step)
            .with("hot", parts.value("hot"))
            .with("cold", parts.value("cold"));
    return Optional.of(suggest(suspect, missing, evidence, Optional.empty(), strain));
  }

  private ScoredSuggestion suggest(
      BodyFacts suspect, Weight missing, Phrase evidence, Optional<Share> lossAfter, long strain) {
    var said = evidence.with("body", suspect.id()).with("weight", speech.weight(missing));
    return new ScoredSuggestion(
        Suggestion.missing(suspect, Cause.PART_NOT_WEIGHED, said, lossAfter),
        PENALTY + strain - suspect.strain(),
        Cause.PART_NOT_WEIGHED.id());
  }

  /** One side was weighed hot and cold, and two were cut. */
  private Optional<ScoredSuggestion> otherSide(BodyFacts suspect) {
    var balance = suspect.balance();
    var side = balance.boning().orElse(Weight.ZERO);
    boolean half =
        balance.weighings().body().head() == 1
            && balance.rail().boning().pieces().stream()
                .allMatch(p -> SideLabels.plain(p.item()).equals(CutTree.SIDE) && p.number() == 1)
            && balance.rail().boning().pieces().size() == 1;
    if (!half || !suspect.isWeighedOut()) {
      return Optional.empty();
    }
    var loss = balance.shares().cuttingLoss().orElseThrow();
    var withBoth = new Share(loss.part().plus(side), side.plus(side));
    if (withBoth.percent().abs().compareTo(SIDES_DIFFER) > 0) {
      return Optional.empty();
    }
    var evidence =
        Phrase.of("LIKELY_CAUSE.PART_NOT_WEIGHED.OTHER_SIDE")
            .with("percent", new Value.Percent(loss.rest().percent()));
    return Optional.of(suggest(suspect, side, evidence, Optional.of(withBoth), 0));
  }
}
