package gambrel.insight.month.bodies;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.Exact;
import gambrel.trade.shop.ItemValue;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a unit of weight of an item is worth to the shop on one day, by {@code values.csv}: the
 * item's own value, else that of the nearest part above it that has one, the carcase left out. Of
 * several rows for an item the last one counts.
 */
public final class ItemValues {
  private final Map<String, BigFraction> inForce = new HashMap<>();

  /** The values in force on {@code day}. */
  public ItemValues(List<ItemValue> values, LocalDate day) {
    values.stream()
        .filter(v -> v.from().filter(from -> from.isAfter(day)).isEmpty())
        .filter(v -> v.to().filter(to -> to.isBefore(day)).isEmpty())
        .forEach(v -> inForce.put(v.item(), Exact.fraction(v.value())));
  }

  /**
   * Money in the major unit for a unit of weight of {@code item}; empty where no value is given.
   */
  public Optional<BigFraction> of(CutTree tree, String item) {
    return carrier(tree, item).flatMap(part -> own(part.id()));
  }

  /** The part whose value {@code item} has: itself, or the nearest above it. */
  public Optional<Item> carrier(CutTree tree, String item) {
    var at = tree.find(item);
    while (at.isPresent() && !at.get().id().equals(CutTree.ROOT)) {
      if (own(at.get().id()).isPresent()) {
        return at;
      }
      at = tree.find(at.get().parent());
    }
    return Optional.empty();
  }

  /** The value that the shop gives to a unit of weight of the whole body. */
  public Optional<BigFraction> carcase() {
    return own(CutTree.ROOT);
  }

  private Optional<BigFraction> own(String item) {
    return Optional.ofNullable(inForce.get(item));
  }
}
