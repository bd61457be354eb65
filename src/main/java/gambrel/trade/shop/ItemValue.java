package gambrel.trade.shop;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The value of an item to the shop.
 *
 * @param item the item
 * @param value money for a unit of weight
 * @param from first day, included
 * @param to last day, included
 */
public record ItemValue(
    String item, BigDecimal value, Optional<LocalDate> from, Optional<LocalDate> to) {}
