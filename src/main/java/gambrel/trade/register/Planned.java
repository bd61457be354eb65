package gambrel.trade.register;

import gambrel.trade.reckoning.BodyAccount;
import java.util.Optional;

/**
 * A statement to be made tonight. Its figures are read from the account when they are used, since
 * the figures of ten years' statements would fill the memory.
 *
 * @param customer the customer's id
 * @param account the body
 * @param replaces the last statement of the customer about the body; empty if there is none
 * @param reissue whether its figures are those of the last statement
 */
public record Planned(
    String customer, BodyAccount account, Optional<RegisterRow> replaces, boolean reissue) {
  /** Its revision. */
  public int revision() {
    return replaces.map(row -> row.revision() + 1).orElse(1);
  }

  /** Whether it replaces a statement because its figures changed. */
  boolean isRevision() {
    return replaces.isPresent() && !reissue;
  }

  /** The body's id. */
  public String body() {
    return account.body().id();
  }
}
