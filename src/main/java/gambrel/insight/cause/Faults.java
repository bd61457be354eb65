package gambrel.insight.cause;

import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.Night;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** Decides from a body's reasons to hold whether and how a cause may be looked for. */
final class Faults {
  /** A body balances if its figures are within four spreads of the usual. */
  static final long BALANCED = UsualRange.strainOf(4);

  /** From this strain of the chill shrink on, a settled body's rail weights are looked at. */
  private static final long ODD_SHRINK = UsualRange.strainOf(4);

  private static final Set<ReasonCode> OF_BALANCE =
      EnumSet.of(
          ReasonCode.RAIL_MISSING,
          ReasonCode.PARTS_MISSING,
          ReasonCode.LOSS_NEGATIVE,
          ReasonCode.LOSS_HIGH,
          ReasonCode.BATCH_OUT,
          ReasonCode.ROW_SET_ASIDE);

  /** Another row does not replace a rail weight that is missing, nor remove one too many. */
  private static final Set<ReasonCode> OF_RAIL =
      EnumSet.of(ReasonCode.RAIL_MISSING, ReasonCode.PARTS_MISSING, ReasonCode.ROW_SET_ASIDE);

  /** Rows set aside for these notices can be read by a finder. */
  private static final Set<NoticeCode> READABLE =
      EnumSet.of(NoticeCode.PART_TWICE, NoticeCode.OVER_CAPACITY);

  /** What may be wrong with a body that balances and has an odd chill shrink. */
  private static final Set<Cause> OF_ODD_SHRINK = EnumSet.of(Cause.HOOK, Cause.UNIT, Cause.DECIMAL);

  private Faults() {}

  /** The reasons to hold that come from weighings that do not add up; none if it is not held. */
  static Set<Reason> of(BodyFacts facts) {
    var decision = facts.account().decision();
    return decision.state() != State.HELD
        ? Set.of()
        : decision.reasons().stream()
            .filter(reason -> OF_BALANCE.contains(reason.code()))
            .collect(Collectors.toSet());
  }

  /** The codes of these reasons. */
  static Set<ReasonCode> codes(BodyFacts facts) {
    return of(facts).stream().map(Reason::code).collect(Collectors.toSet());
  }

  /** Whether a cause is looked for. */
  static boolean isSuspect(BodyFacts facts, Night night) {
    return isUnbalanced(facts, night) || hasOddShrink(facts);
  }

  /**
   * Whether it is held for its balance. A body with a row set aside that no finder can read does
   * not count: the row's weight is in no sum, so the row has to be mended first.
   */
  static boolean isUnbalanced(BodyFacts facts, Night night) {
    return !of(facts).isEmpty()
        && night.ledger().setAside().stream()
            .filter(aside -> aside.effective() && aside.bodies().contains(facts.id()))
            .allMatch(aside -> READABLE.contains(aside.notice().code()));
  }

  private static boolean hasOddShrink(BodyFacts facts) {
    var decision = facts.account().decision();
    return decision.state().isSettled()
        && decision.released().isEmpty()
        && (facts.chillStrain() >= ODD_SHRINK || isColdAboveHot(facts));
  }

  /** Whether it is heavier cold than hot. */
  static boolean isColdAboveHot(BodyFacts facts) {
    var balance = facts.balance();
    return balance.rail().sameParts()
        && balance.cold().orElse(Weight.ZERO).compareTo(balance.hot().orElse(Weight.ZERO)) > 0;
  }

  /** Whether a change may mend a body as far as sums show, so that it is worth trying. */
  static boolean mayMend(Candidate candidate, BodyFacts suspect, RowIndex rows) {
    if (!candidate.estimated()) {
      return true;
    }
    var codes = codes(suspect);
    if (codes.isEmpty()) {
      return OF_ODD_SHRINK.contains(candidate.cause()) && candidate.changesRail();
    }
    if (codes.contains(ReasonCode.LOSS_HIGH) || codes.contains(ReasonCode.LOSS_NEGATIVE)) {
      return Collections.disjoint(codes, OF_RAIL)
          && candidate.lossStrain(rows, suspect.id()) <= BALANCED;
    }
    return codes.contains(ReasonCode.BATCH_OUT)
        && candidate.changes().stream()
            .anyMatch(change -> suspect.unbalancedBatchRows().anyMatch(change.weighing()::equals));
  }
}
