package gambrel.insight.cause;

import gambrel.trade.balance.BatchState;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether a change can cure what is wrong with a body, as far as sums tell. */
final class Relevance {
  /** A body closes if its figures are within four spreads of the usual. */
  static final long CLOSED = 16 * UsualRange.ONE;

  /** What may be wrong with a body that balances, but shrank oddly. */
  private static final Set<Cause> OF_THE_RAIL = Set.of(Cause.HOOK, Cause.UNIT, Cause.DECIMAL);

  private final RowIndex traces;
  private final BodyFacts suspect;
  private final Set<ReasonCode> faults;

  Relevance(RowIndex traces, BodyFacts suspect) {
    this.traces = traces;
    this.suspect = suspect;
    this.faults =
        Faults.of(suspect.account()).stream().map(Reason::code).collect(Collectors.toSet());
  }

  /** Whether it is worth trying. */
  boolean mayClose(Candidate candidate) {
    if (!candidate.estimated()) {
      return true;
    }
    if (faults.isEmpty()) {
      return OF_THE_RAIL.contains(candidate.cause())
          && candidate.touches().stream().anyMatch(touch -> touch.weighing().step().isRail());
    }
    if (faults.contains(ReasonCode.LOSS_HIGH) || faults.contains(ReasonCode.LOSS_NEGATIVE)) {
      return !isRailIncomplete() && Estimate.lossStrain(traces, candidate, suspect.id()) <= CLOSED;
    }
    return faults.contains(ReasonCode.BATCH_OUT) && touchesBatch(candidate);
  }

  /** Another row does not bring a rail weight back that is missing or one too many. */
  private boolean isRailIncomplete() {
    return faults.contains(ReasonCode.RAIL_MISSING)
        || faults.contains(ReasonCode.PARTS_MISSING)
        || faults.contains(ReasonCode.ROW_SET_ASIDE);
  }

  private boolean touchesBatch(Candidate candidate) {
    return suspect.balance().batches().stream()
        .filter(batch -> batch.state() == BatchState.OUT)
        .anyMatch(
            batch ->
                candidate.touches().stream()
                    .anyMatch(touch -> batch.weighings().contains(touch.weighing())));
  }
}
