package gambrel.trade.shop;

import gambrel.trade.measure.Weight;
import java.util.Optional;

/**
 * The meaning of a code that is keyed at a scale.
 *
 * @param pattern the code, or the beginning of codes followed by {@code *}
 * @param item the item of the cut tree, or empty for steps without an item
 * @param step the step on the way from the rail to the box
 * @param description the shop's own words
 * @param tare weight of the empty container, in the shop's unit
 * @param tareEach whether the tare counts once for each piece
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
