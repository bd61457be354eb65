package gambrel.trade.shop;

import gambrel.trade.measure.Weight;
import java.util.Optional;

/**
 * What a code keyed at a scale means.
 *
 * @param pattern the code, or the beginning of codes followed by {@code *}
 * @param item the item of the cut tree, or empty for steps that name none
 * @param step where the thing is on its way
 * @param description the shop's own words
 * @param tare weight of the empty container, in the shop's unit
 * @param tareEach whether the tare counts once a piece
 * @param nominal the true weight of a test weight, in the shop's unit
 */
public record ScaleCode(
    String pattern,
    String item,
    Step step,
    String description,
    Weight tare,
    boolean tareEach,
    Optional<Weight> nominal) {}
