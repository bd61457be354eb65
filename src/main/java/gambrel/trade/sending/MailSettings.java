package gambrel.trade.sending;

import java.time.LocalDate;

/**
 * The settings of {@code mail.properties}. A text is empty if the setting is missing.
 *
 * @param from the shop's own address
 * @param host the mail server
 * @param port its port
 * @param security how the connection is protected
 * @param user the account at the server; empty if the server asks for none
 * @param passwordFile the file with the password, relative to the shop folder
 * @param replyTo where answers go
 * @param copyTo who gets a copy of each message
 * @param allTo who gets every message instead of the customers, for a trial
 * @param since the first day of issue of statements to send
 * @param mostAtOnce most messages that go without being asked for all of them
 */
public record MailSettings(
    String from,
    String host,
    int port,
    Security security,
    String user,
    String passwordFile,
    String replyTo,
    String copyTo,
    String allTo,
    LocalDate since,
    int mostAtOnce) {
  /** How the connection to the server is protected. */
  public enum Security {
    /** TLS begins after the greeting (RFC 3207). */
    STARTTLS(587),
    /** TLS from the first byte (RFC 8314). */
    TLS(465),
    /** Not at all, for a server on this machine. */
    NONE(25);

    private final int port;

    Security(int port) {
      this.port = port;
    }

    /** The usual port. */
    public int port() {
      return port;
    }
  }

  /** Whether all messages go to one address for a trial. */
  public boolean isTrial() {
    return !allTo.isEmpty();
  }
}
