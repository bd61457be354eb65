package gambrel.intake;

import gambrel.measure.WeightUnit;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A weight as a cell or barcode gives it.
 *
 * @param value exact
 * @param unit the unit that is written with it
 */
record Amount(BigDecimal value, Optional<WeightUnit> unit) {}
