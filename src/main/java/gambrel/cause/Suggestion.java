package gambrel.cause;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Phrase;
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
 * @param evidence why, with the numbers; where no line can be written its advice says what to look
 *     for
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
    Phrase evidence,
    List<Phrase> lines) {
  /** Copies the lists. */
  public Suggestion {
    rows = List.copyOf(rows);
    lines = List.copyOf(lines);
  }

  /** The same as notices: one for each line to paste, or one with the advice. */
  public List<Notice> notices() {
    var notice =
        Notice.of(
                NoticeCode.LIKELY_CAUSE,
                evidence.key().substring(evidence.key().indexOf('.') + 1),
                rows.isEmpty() ? Place.NONE : rows.get(0))
            .saying(evidence)
            .aboutBody(body)
            .aboutTicket(scale, ticket)
            .quoting(raw);
    return lines.isEmpty()
        ? List.of(notice)
        : lines.stream().map(line -> notice.with("correction", line).advising("LINE")).toList();
  }
}
