package gambrel.night;

import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.SetAside;
import java.util.HashSet;
import java.util.Set;

/**
 * Gives notices the severity of what follows from them tonight: what holds no statement any more
 * does not wait for a person.
 */
final class NightSeverity {
  private final Night night;
  private final Set<ReasonCode> holding = new HashSet<>();

  NightSeverity(Night night) {
    this.night = night;
    for (var account : night.bodies().values()) {
      if (account.decision().state() == State.HELD) {
        account.decision().reasons().forEach(reason -> holding.add(reason.code()));
      }
    }
  }

  /** A notice about figures. */
  Notice of(Notice notice) {
    boolean holds =
        switch (notice.code()) {
          case BATCH_OUT -> holding.contains(ReasonCode.BATCH_OUT);
          case BATCH_LATE -> holding.contains(ReasonCode.BATCH_LATE);
          case SCALE_FAILED -> holding.contains(ReasonCode.SCALE_FAILED);
          case SHARES_SUM -> isHeld(notice.body());
          default -> true;
        };
    return holds ? notice : notice.as(Severity.MARK);
  }

  private boolean isHeld(String body) {
    var account = night.bodies().get(body);
    return account != null && account.decision().state() == State.HELD;
  }

  /** The notice of a row set aside; one that was released for every body it names is settled. */
  Notice of(SetAside row) {
    var reason = new Reason(ReasonCode.ROW_SET_ASIDE, row.name());
    boolean settled =
        !row.bodies().isEmpty()
            && row.bodies().stream().allMatch(body -> isReleased(night.bodies().get(body), reason));
    return settled ? row.notice().as(Severity.NOTE) : row.notice();
  }

  private static boolean isReleased(BodyAccount account, Reason reason) {
    return account != null && account.decision().released().contains(reason);
  }
}
