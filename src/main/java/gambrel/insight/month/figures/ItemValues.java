package gambrel.insight.month.figures;

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
 * What a unit of weight of an item is worth to the shop on one day, from {@code values.csv}. An
 * item without a value of its own has that of the nearest part above it, the carcase excepted. If
 * an item has several rows for the day, the last row counts.
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

  /** Money in the major unit for a unit of weight of {@code item}; empty if it has no value. */
  public Optional<BigFraction> of(CutTree tree, String item) {
    return carrier(tree, item).flatMap(part -> own(part.id()));
  }

  /** The part whose value {@code item} has: itself or the nearest above it; empty if none. */
  public Optional<Item> carrier(CutTree tree, String item) {
    return tree.find(item).stream()
        .flatMap(known -> tree.path(known.id()).stream().skip(1))
        .filter(part -> own(part.id()).isPresent())
        .reduce((above, below) -> below);
  }

  /** The value of a unit of weight of the whole body; empty if the shop gives none. */
  public Optional<BigFraction> carcase() {
    return own(CutTree.ROOT);
  }

  private Optional<BigFraction> own(String item) {
    return Optional.ofNullable(inForce.get(item));
  }
}
