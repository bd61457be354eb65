package gambrel.trade.sending;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.register.RegisterRow;

/**
 * A statement in force that does not go out by itself.
 *
 * @param statement the statement
 * @param why the reason
 * @param words the server's words if it refused the statement; else empty
 */
public record Unsent(RegisterRow statement, Why why, String words) {
  /** Reasons. */
  public enum Why {
    /** The body is held now. */
    HELD,
    /** The customer has no part of the body now. */
    OWNER,
    /** There is no address, or one that mail cannot be sent to. */
    ADDRESS,
    /** The document is missing or not as it was issued. */
    LOST,
    /** The server refused it for good. */
    REFUSED,
    /** It may have arrived or not. */
    UNSURE;

    /** Whether only a person can settle it, and no other notice asks for that. */
    public boolean isOfMail() {
      return this == ADDRESS || this == REFUSED || this == UNSURE;
    }
  }

  /** A statement for whose customer the server was not asked. */
  public Unsent(RegisterRow statement, Why why) {
    this(statement, why, "");
  }

  /** The notice about it. It names the customer by his id. */
  public Notice notice() {
    return Notice.of(NoticeCode.UNSENT, why.name())
        .aboutBody(statement.body())
        .with("customer", statement.customer())
        .with("statement", statement.file())
        .with("again", statement.customer() + '/' + statement.body())
        .with("words", words);
  }
}
