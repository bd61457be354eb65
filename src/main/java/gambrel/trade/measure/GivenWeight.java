package gambrel.trade.measure;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A weight as a barcode or a cell gives it.
 *
 * @param value exact, with the decimals that were given
 * @param unit the unit that was given with it
 */
public record GivenWeight(BigDecimal value, Optional<WeightUnit> unit) {}
