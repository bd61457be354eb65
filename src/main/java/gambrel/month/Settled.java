package gambrel.month;

import gambrel.reckoning.BodyAccount;
import java.util.Collection;
import java.util.List;

/** Bodies whose weights hold and are all there. */
public final class Settled {
  private Settled() {}

  /** Those of {@code accounts}. */
  public static List<BodyAccount> of(Collection<BodyAccount> accounts) {
    return accounts.stream().filter(BodyAccount::isSettled).toList();
  }
}
