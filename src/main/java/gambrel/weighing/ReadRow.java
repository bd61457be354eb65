package gambrel.weighing;

import gambrel.notice.Place;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A row whose time and status have been read: enough to compare it with other rows.
 *
 * @param row the row after corrections
 * @param time when, if that can be read
 * @param status what its status says
 * @param key what makes two rows the same weighing
 * @param content what they must agree in to be a repeat
 * @param removed whether a correction removes it
 */
record ReadRow(
    ExportRow row,
    Optional<OffsetDateTime> time,
    Status status,
    String key,
    String content,
    boolean removed) {

  /** The same row under another key. */
  ReadRow keyed(String other) {
    return new ReadRow(row, time, status, other, content, removed);
  }

  Place place() {
    return row.place();
  }

  String scale() {
    return row.get(Field.SCALE);
  }

  String ticket() {
    return row.get(Field.TICKET);
  }

  /** A notice about this row. */
  Notice notice(NoticeCode code, String message) {
    return Notice.of(code, place(), message)
        .aboutTicket(scale(), ticket())
        .aboutBody(row.get(Field.BODY))
        .quoting(row.raw());
  }

  /** Whether it takes effect by {@code asOf}; a row without a readable time does. */
  boolean effective(OffsetDateTime asOf) {
    return time.isEmpty() || !time.get().isAfter(asOf);
  }
}
