package gambrel.trade.register;

import gambrel.trade.reckoning.BodyAccount;
import java.util.Optional;

/**
 * A statement to be made tonight. Its figures are read off the account when they are wanted: those
 * of ten years' statements would fill the memory.
 *
 * @param customer for whom
 * @param account about which body
 * @param replaces the statement that it replaces
 * @param reissue whether only a reissue asked for it
 */
public record Planned(
    String customer, BodyAccount account, Optional<RegisterRow> replaces, boolean reissue) {
  /** Its revision. */
  public int revision() {
    return replaces.map(row -> row.revision() + 1).orElse(1);
  }

  /** The body's id. */
  public String body() {
    return account.body().id();
  }
}
