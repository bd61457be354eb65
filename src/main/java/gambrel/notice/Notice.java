package gambrel.notice;

import java.util.Comparator;

/**
 * One thing that a person should know, as {@code data/notices.csv} lists it.
 *
 * @param severity its consequence
 * @param code its stable code
 * @param place where it stands
 * @param scale the scale, or empty
 * @param ticket the ticket, or empty
 * @param body the body, or empty
 * @param message what is wrong
 * @param advice what to do
 * @param raw the row as it was read, or empty
 */
public record Notice(
    Severity severity,
    NoticeCode code,
    Place place,
    String scale,
    String ticket,
    String body,
    String message,
    String advice,
    String raw) {
  /** What is longer was not written by a person, and nobody reads it. */
  private static final int LONGEST_MESSAGE = 2_000;

  /** The order of {@code data/notices.csv}: file, line, code, then what tells two apart. */
  public static final Comparator<Notice> ORDER =
      Comparator.comparing(Notice::place)
          .thenComparing(n -> n.code().id())
          .thenComparing(Notice::body)
          .thenComparing(Notice::scale)
          .thenComparing(Notice::ticket)
          .thenComparing(Notice::message);

  /** Keeps the beginning of a monstrous message. */
  public Notice {
    message =
        message.length() <= LONGEST_MESSAGE
            ? message
            : message.substring(0, LONGEST_MESSAGE - 1) + '…';
  }

  /** A notice with the code's usual severity and advice. */
  public static Notice of(NoticeCode code, Place place, String message) {
    return new Notice(code.severity(), code, place, "", "", "", message, code.advice(), "");
  }

  /** The same notice about {@code body}. */
  public Notice aboutBody(String body) {
    return new Notice(severity, code, place, scale, ticket, body, message, advice, raw);
  }

  /** The same notice about a scale's ticket. */
  public Notice aboutTicket(String scale, String ticket) {
    return new Notice(severity, code, place, scale, ticket, body, message, advice, raw);
  }

  /** The same notice with other advice. */
  public Notice advising(String advice) {
    return new Notice(severity, code, place, scale, ticket, body, message, advice, raw);
  }

  /** The same notice with another consequence. */
  public Notice as(Severity severity) {
    return new Notice(severity, code, place, scale, ticket, body, message, advice, raw);
  }

  /** The same notice with the row as it was read. */
  public Notice quoting(String raw) {
    return new Notice(severity, code, place, scale, ticket, body, message, advice, raw);
  }
}
