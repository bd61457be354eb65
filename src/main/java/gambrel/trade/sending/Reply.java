package gambrel.trade.sending;

/**
 * Why a message was refused.
 *
 * @param code the server's reply code (RFC 5321, 4.2); 0 if the connection broke
 * @param words the server's words, without addresses
 */
public record Reply(int code, String words) {
  private static final int PERMANENT = 500;

  /** Whether the same message would be refused again. */
  public boolean isFinal() {
    return code >= PERMANENT;
  }
}
