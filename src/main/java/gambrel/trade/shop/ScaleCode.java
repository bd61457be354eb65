package gambrel.trade.shop;

import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;

/**
 * The meaning of a code that is keyed at a scale.
 *
 * @param pattern the code, or the beginning of codes followed by {@code *}
 * @param items the items of the cut trees, each of other species; none for steps without an item
 * @param step the step on the way from the rail to the box
 * @param description the shop's own words
 * @param tare weight of the empty container, in the shop's unit
 * @param tareEach whether the tare counts once for each piece
 * @param nominal the true weight of a test weight, in the shop's unit
 */
public record ScaleCode(
    String pattern,
    List<String> items,
    Step step,
    String description,
    Weight tare,
    boolean tareEach,
    Optional<Weight> nominal) {
  /** Parts the items of a code. */
  public static final String PARTED = "|";

  /** Copies the items. */
  public ScaleCode {
    items = List.copyOf(items);
  }

  /** The only item; empty if there is none, or one for each of several species. */
  public String item() {
    return items.size() == 1 ? items.get(0) : "";
  }

  /** The same code with one of its items. */
  public ScaleCode of(String item) {
    return items.size() == 1
        ? this
        : new ScaleCode(pattern, List.of(item), step, description, tare, tareEach, nominal);
  }
}
