package gambrel.trade.shop;

import gambrel.trade.notice.Place;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A value laid over rows of the exports.
 *
 * @param scale the scale of the rows
 * @param ticket a ticket, a run {@code FIRST-LAST}, or one row as {@code FILE:LINE}
 * @param date only rows of this local date
 * @param field the export column to change
 * @param value its new value
 * @param by who decided
 * @param on when; it has no effect before
 * @param reason why
 * @param place where the correction stands
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
