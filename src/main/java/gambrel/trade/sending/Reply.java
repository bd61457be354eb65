package gambrel.trade.sending;

/**
 * What became of a message that was handed to the mail server.
 *
 * @param state taken, refused, or not known
 * @param code the server's reply code if it refused it (RFC 5321, 4.2); 0 if the connection broke,
 *     or if the refusal is not about the message
 * @param words why it was refused, without addresses; empty if it was not
 */
public record Reply(SentState state, int code, String words) {
  /** The server took it. */
  public static final Reply SENT = new Reply(SentState.SENT, 0, "");

  /** There is no answer. */
  public static final Reply UNKNOWN = new Reply(SentState.UNKNOWN, 0, "");

  private static final int PERMANENT = 500;

  /** Whether the same message would be refused again. */
  public boolean isFinal() {
    return state == SentState.REFUSED && code >= PERMANENT;
  }
}
