package gambrel.trade.sending;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.register.RegisterRow;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;

/**
 * What became of one revision of a statement when it was mailed last.
 *
 * @param customer whose
 * @param body of which body
 * @param revision the revision
 * @param number the statement's number; empty if it has none
 * @param address the address to which it went
 * @param reply what became of it
 * @param at the moment of the sending, shop-local
 * @param messageId the message that carried it
 */
public record SentRow(
    String customer,
    String body,
    int revision,
    Optional<Integer> number,
    String address,
    Reply reply,
    LocalDateTime at,
    String messageId) {
  /** By customer, body and revision. */
  static final Comparator<SentRow> ORDER =
      Comparator.comparing(SentRow::customer, ByteOrder.IDS)
          .thenComparing(SentRow::body, ByteOrder.IDS)
          .thenComparing(SentRow::revision);

  /** The row of a statement that is about to be handed over. */
  public static SentRow unknown(
      RegisterRow statement, String address, LocalDateTime at, String messageId) {
    return new SentRow(
        statement.customer(),
        statement.body(),
        statement.revision(),
        statement.number(),
        address,
        Reply.UNKNOWN,
        at,
        messageId);
  }

  /** This row with what became of the statement. */
  public SentRow with(Reply reply) {
    return new SentRow(customer, body, revision, number, address, reply, at, messageId);
  }
}
