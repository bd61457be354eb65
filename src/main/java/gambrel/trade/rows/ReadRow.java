package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.UnreadRow;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A corrected row with its time, unit and status read.
 *
 * @param row the row after corrections
 * @param time the moment of the weighing; empty if it cannot be read
 * @param unit the unit of the row's weights; empty if it is not understood
 * @param status the meaning of the status cell
 * @param removed whether a correction removes the row
 */
public record ReadRow(
    ExportRow row,
    Optional<OffsetDateTime> time,
    Optional<WeightUnit> unit,
    Status status,
    boolean removed) {

  /** File and line of the row. */
  public Place place() {
    return row.place();
  }

  /** The text of the scale cell. */
  public String scale() {
    return row.get(Field.SCALE);
  }

  /** Whether a correction that cannot be read names this row. */
  public boolean isNamedBy(UnreadRow correction) {
    String named = correction.named("ticket").orElse("");
    String date = time.map(t -> t.toLocalDate().toString()).orElse("");
    boolean ofTicket =
        CorrectionOverlay.inRun(named, ticket())
            || !ticket().isEmpty() && Tickets.key("", named).equals(Tickets.key("", ticket()));
    boolean ofScale = correction.named("scale").filter(id -> !id.equals(scale())).isEmpty();
    return correction.named("date").filter(on -> !on.equals(date)).isEmpty()
        && (ofTicket && ofScale || named.equals(place().toString()));
  }

  String ticket() {
    return row.get(Field.TICKET);
  }

  /** One text for all spellings of the scale's ticket. */
  String ticketKey() {
    return Tickets.key(scale(), ticket());
  }

  /** The notice with this row's place, scale, ticket, body and text. */
  public Notice about(Notice notice) {
    return notice
        .at(place())
        .aboutTicket(scale(), ticket())
        .aboutBody(row.get(Field.BODY))
        .quoting(row.raw());
  }

  /** Whether the row takes effect by {@code asOf}; a row without a readable time does. */
  public boolean effective(OffsetDateTime asOf) {
    return time.isEmpty() || !time.get().isAfter(asOf);
  }
}
