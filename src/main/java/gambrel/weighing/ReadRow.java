package gambrel.weighing;

import gambrel.notice.Place;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A row whose time and status have been read.
 *
 * @param row the row after corrections
 * @param time when, if that can be read
 * @param status what its status says
 * @param removed whether a correction removes it
 */
record ReadRow(ExportRow row, Optional<OffsetDateTime> time, Status status, boolean removed) {

  Place place() {
    return row.place();
  }

  String scale() {
    return row.get(Field.SCALE);
  }

  String ticket() {
    return row.get(Field.TICKET);
  }

  /** A notice, made a notice about this row. */
  Notice about(Notice notice) {
    return notice
        .at(place())
        .aboutTicket(scale(), ticket())
        .aboutBody(row.get(Field.BODY))
        .quoting(row.raw());
  }

  /** Whether it takes effect by {@code asOf}; a row without a readable time does. */
  boolean effective(OffsetDateTime asOf) {
    return time.isEmpty() || !time.get().isAfter(asOf);
  }
}
