package gambrel.month;

import gambrel.decision.State;
import gambrel.reckoning.BodyAccount;
import java.util.Collection;
import java.util.List;

/**
 * Bodies whose weights hold and are all there: issued or closed, with no batch open. A held body may
 * lack a tub, and the meat of an open batch is not yet taken home; in a comparison either would pass
 * for a poor body.
 */
public final class Settled {
  private Settled() {}

  /** Those of {@code accounts}. */
  public static List<BodyAccount> of(Collection<BodyAccount> accounts) {
    return accounts.stream().filter(Settled::is).toList();
  }

  private static boolean is(BodyAccount account) {
    var state = account.decision().state();
    boolean holds = state == State.ISSUED || state == State.CLOSED;
    return holds && account.balance().batches().stream().noneMatch(batch -> batch.isOpen());
  }
}
