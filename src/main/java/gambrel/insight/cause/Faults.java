package gambrel.insight.cause;

import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** The reasons to hold a body that come from weighings that do not add up. */
final class Faults {
  /** A chill shrink beyond so many spreads from the usual is worth a look at the hooks. */
  private static final long ODD_SHRINK = 16 * UsualRange.ONE;

  private static final Set<ReasonCode> OF_BALANCE =
      EnumSet.of(
          ReasonCode.RAIL_MISSING,
          ReasonCode.PARTS_MISSING,
          ReasonCode.LOSS_NEGATIVE,
          ReasonCode.LOSS_HIGH,
          ReasonCode.BATCH_OUT,
          ReasonCode.ROW_SET_ASIDE);

  /** Rows set aside for their weight or number, which a finder knows how to read. */
  private static final Set<NoticeCode> READABLE =
      EnumSet.of(NoticeCode.RAIL_TWICE, NoticeCode.OVER_CAPACITY);

  private Faults() {}

  /** Those of a body that is held. */
  static Set<Reason> of(BodyAccount account) {
    return account.decision().state() != State.HELD
        ? Set.of()
        : account.decision().reasons().stream()
            .filter(reason -> OF_BALANCE.contains(reason.code()))
            .collect(Collectors.toSet());
  }

  /**
   * Whether a cause may be looked for. With a row set aside for anything else that row comes first:
   * its weight is not in the sums.
   */
  static boolean isSuspect(BodyFacts facts, Night night) {
    return isUnbalanced(facts.account(), night) || hasOddShrink(facts);
  }

  /** Whether it is held for its balance. */
  static boolean isUnbalanced(BodyAccount account, Night night) {
    return !of(account).isEmpty()
        && night.ledger().setAside().stream()
            .filter(aside -> aside.effective() && aside.bodies().contains(account.body().id()))
            .allMatch(aside -> READABLE.contains(aside.notice().code()));
  }

  private static boolean hasOddShrink(BodyFacts facts) {
    return facts.account().decision().state().isSettled()
        && facts.account().decision().released().isEmpty()
        && (facts.chillStrain() >= ODD_SHRINK || isColdAboveHot(facts));
  }

  /** Whether it is heavier cold than hot. */
  static boolean isColdAboveHot(BodyFacts facts) {
    var balance = facts.balance();
    return balance.rail().sameParts()
        && balance.cold().orElse(Weight.ZERO).compareTo(balance.hot().orElse(Weight.ZERO)) > 0;
  }
}
