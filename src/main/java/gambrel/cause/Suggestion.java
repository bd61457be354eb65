package gambrel.cause;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import java.util.List;

/**
 * A change that would make a body balance, with the evidence for it.
 *
 * @param body the body that does not balance
 * @param cause what probably happened
 * @param rows the rows concerned, earliest first; empty where a weighing is missing
 * @param scale the scale of the first row, or empty
 * @param ticket the ticket of the first row, or empty
 * @param raw the first row as it stands in its export, or empty
 * @param evidence why, in a sentence or two with numbers
 * @param advice what to look for, where no line can be written; else empty
 * @param lines rows for {@code corrections.csv}, {@code by} and {@code on} left blank for whoever
 *     decides
 */
public record Suggestion(
    String body,
    Cause cause,
    List<Place> rows,
    String scale,
    String ticket,
    String raw,
    String evidence,
    String advice,
    List<String> lines) {
  /** Copies the lists. */
  public Suggestion {
    rows = List.copyOf(rows);
    lines = List.copyOf(lines);
  }

  /** The same as notices: one for each line to paste, or one with the advice. */
  public List<Notice> notices() {
    return lines.isEmpty()
        ? List.of(notice(advice))
        : lines.stream().map(this::notice).toList();
  }

  private Notice notice(String advice) {
    return Notice.of(NoticeCode.LIKELY_CAUSE, rows.isEmpty() ? Place.NONE : rows.get(0), evidence)
        .aboutBody(body)
        .aboutTicket(scale, ticket)
        .advising(advice)
        .quoting(raw);
  }
}
