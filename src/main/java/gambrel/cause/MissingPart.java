package gambrel.cause;

import gambrel.balance.BodyBalance;
import gambrel.balance.RailCover;
import gambrel.cuts.CutTree;
import gambrel.cuts.SideLabels;
import gambrel.decision.ReasonCode;
import gambrel.measure.Weight;
import gambrel.shop.Step;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds a hung part that was weighed at one step and not at another, or at neither. */
final class MissingPart {
  private static final long PENALTY = 100;

  /** Sides of one body differ, so a guess from the other side is good to so much of both. */
  private static final BigFraction SIDES_DIFFER = BigFraction.of(3, 100);

  private final Traces traces;
  private final Speech speech;

  MissingPart(Traces traces) {
    this.traces = traces;
    this.speech = new Speech(traces.night());
  }

  Optional<Fit> fit(BodyFacts suspect) {
    var codes =
        Faults.of(suspect.account()).stream().map(r -> r.code()).collect(Collectors.toSet());
    var balance = suspect.balance();
    boolean both = balance.hot().isPresent() && balance.cold().isPresent();
    if (codes.contains(ReasonCode.PARTS_MISSING) && both) {
      return balance.hot().get().compareTo(balance.cold().get()) > 0
          ? cold(suspect)
          : hot(suspect);
    }
    if (codes.equals(Set.of(ReasonCode.LOSS_NEGATIVE)) && both) {
      return otherSide(suspect);
    }
    return Optional.empty();
  }

  /** What the hot weight lets expect, less what was weighed cold. */
  private Optional<Fit> cold(BodyFacts suspect) {
    var balance = suspect.balance();
    var kept = BigFraction.ONE.subtract(chill(suspect));
    var missing =
        Weight.of(balance.hot().get().fraction().multiply(kept)).minus(balance.cold().get());
    boolean countsIn =
        balance.rail().boning().pieces().stream().allMatch(piece -> piece.step() == Step.COLD);
    var shift =
        new BodyFacts.Shift(0, countsIn ? missing.hundredThousandths() : 0, 0, 0);
    return fit(suspect, Step.COLD, missing, suspect.strain(shift));
  }

  private Optional<Fit> hot(BodyFacts suspect) {
    var balance = suspect.balance();
    var kept = BigFraction.ONE.subtract(chill(suspect));
    var missing =
        Weight.of(balance.cold().get().fraction().divide(kept)).minus(balance.hot().get());
    return fit(suspect, Step.HOT, missing, suspect.strain());
  }

  private BigFraction chill(BodyFacts suspect) {
    long middle =
        traces.usual().chill(suspect.account().body().species()).map(Band::middle).orElse(20_000L);
    return BigFraction.of(middle, 1_000_000);
  }

  private Optional<Fit> fit(BodyFacts suspect, Step step, Weight missing, long strain) {
    if (missing.hundredThousandths() <= 0 || strain > Relevance.CLOSED) {
      return Optional.empty();
    }
    var balance = suspect.balance();
    String evidence =
        "Hot: "
            + parts(balance, balance.rail().hot())
            + ". Cold: "
            + parts(balance, balance.rail().cold())
            + ". What lacks "
            + step.id()
            + " would weigh about "
            + speech.weight(missing)
            + ".";
    return Optional.of(suggest(suspect, step, missing, evidence, strain));
  }

  private Fit suggest(
      BodyFacts suspect, Step step, Weight missing, String evidence, long strain) {
    return new Fit(
        new Suggestion(
            suspect.id(),
            Cause.PART_NOT_WEIGHED,
            List.of(),
            "",
            "",
            "",
            evidence,
            "Look for a "
                + step.id()
                + " weight of about "
                + speech.weight(missing)
                + " in the rail scale's memory or under another body.",
            List.of()),
        PENALTY + strain - suspect.strain(),
        Cause.PART_NOT_WEIGHED.id());
  }

  private static String parts(BodyBalance balance, RailCover cover) {
    return cover.pieces().stream()
        .map(
            piece ->
                piece.number()
                    + " "
                    + balance
                        .weighings()
                        .tree()
                        .find(piece.item())
                        .map(item -> Speech.small(item.name()))
                        .orElse(piece.item()))
        .collect(Collectors.joining(", "));
  }

  /** One side was weighed hot and cold, and two were cut. */
  private Optional<Fit> otherSide(BodyFacts suspect) {
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
    var loss = balance.outputs().flatMap(o -> o.cuttingLoss()).orElseThrow();
    var twice = side.plus(side).fraction();
    var gap = loss.plus(side).fraction().divide(twice);
    if (gap.abs().compareTo(SIDES_DIFFER) > 0) {
      return Optional.empty();
    }
    String evidence =
        "Only one side of "
            + suspect.id()
            + " was weighed on the rail, and what came of it is "
            + Speech.percent(side.minus(loss).percentOf(side))
            + " of that side: the other side was cut too.";
    return Optional.of(suggest(suspect, Step.COLD, side, evidence, 0));
  }
}
