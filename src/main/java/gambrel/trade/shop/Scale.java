package gambrel.trade.shop;

import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One weighing instrument.
 *
 * @param id the key that exports use
 * @param where where it stands, or empty
 * @param layout the layout of its exports, or empty
 * @param unit its own unit: that of division and capacity, and of its rows by default
 * @param division the smallest step that it shows, above zero
 * @param capacity the most that it weighs
 * @param accuracy its accuracy class
 */
public record Scale(
    String id,
    String where,
    String layout,
    WeightUnit unit,
    BigDecimal division,
    Optional<BigDecimal> capacity,
    Optional<AccuracyClass> accuracy) {}
