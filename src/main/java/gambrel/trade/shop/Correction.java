package gambrel.trade.shop;

import gambrel.trade.notice.Place;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A correction of one field in rows of the exports.
 *
 * @param scale the scale of the rows
 * @param ticket a ticket, a run {@code FIRST-LAST}, or one row as {@code FILE:LINE}
 * @param date only rows of this date in the shop's zone
 * @param field the export column to change
 * @param value its new value
 * @param by the person who decided
 * @param on the moment of the decision; the correction has no effect before it
 * @param reason the reason
 * @param place file and line of the correction
 */
public record Correction(
    String scale,
    String ticket,
    Optional<LocalDate> date,
    String field,
    String value,
    String by,
    OffsetDateTime on,
    String reason,
    Place place) {}
