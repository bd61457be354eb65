package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Place;
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
public record ReadRow(
    ExportRow row, Optional<OffsetDateTime> time, Status status, boolean removed) {

  public Place place() {
    return row.place();
  }

  public String scale() {
    return row.get(Field.SCALE);
  }

  String ticket() {
    return row.get(Field.TICKET);
  }

  /** A notice, made a notice about this row. */
  public Notice about(Notice notice) {
    return notice
        .at(place())
        .aboutTicket(scale(), ticket())
        .aboutBody(row.get(Field.BODY))
        .quoting(row.raw());
  }

  /** Whether it takes effect by {@code asOf}; a row without a readable time does. */
  public boolean effective(OffsetDateTime asOf) {
    return time.isEmpty() || !time.get().isAfter(asOf);
  }
}
