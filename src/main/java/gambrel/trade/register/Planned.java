package gambrel.trade.register;

import gambrel.trade.account.CustomerAccount;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.reckoning.BodyAccount;
import java.util.Comparator;
import java.util.Optional;

/**
 * A statement to be made tonight. Its figures are read from the account when they are used, since
 * the figures of ten years' statements would fill the memory.
 *
 * @param customer the customer's id
 * @param account the body
 * @param replaces the last statement of the customer about the body; empty if there is none
 * @param reissue whether its figures are those of the last statement
 * @param number its number; empty for a draft, and before it is given
 * @param owed the customer's account with this statement; empty for a draft, and before it is given
 */
public record Planned(
    String customer,
    BodyAccount account,
    Optional<RegisterRow> replaces,
    boolean reissue,
    Optional<Integer> number,
    Optional<CustomerAccount> owed) {
  /** In the order in which the statements of one night are numbered: by customer, then body. */
  static final Comparator<Planned> ORDER =
      Comparator.comparing(Planned::customer, ByteOrder.IDS)
          .thenComparing(Planned::body, ByteOrder.IDS);

  /** A statement or draft without a number. */
  public Planned(
      String customer, BodyAccount account, Optional<RegisterRow> replaces, boolean reissue) {
    this(customer, account, replaces, reissue, Optional.empty(), Optional.empty());
  }

  /** The same with its number. */
  public Planned numbered(int number) {
    return new Planned(customer, account, replaces, reissue, Optional.of(number), owed);
  }

  /** The same with the account of its customer. */
  public Planned owing(CustomerAccount all) {
    return new Planned(customer, account, replaces, reissue, number, Optional.of(all));
  }

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
