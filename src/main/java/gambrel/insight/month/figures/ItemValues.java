package gambrel.insight.month.figures;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.shop.ItemValue;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a unit of weight of an item is worth to the shop on one day, from {@code values.csv}. An
 * item without a value of its own has that of the nearest part above it, the carcase excepted. If
 * an item has several rows for the day, the last row counts.
 *
 * <p>By the worth of a unit of weight on the rail every loss of weight is turned into money. It is
 * the shop's own value of {@code carcase}. Without that it is the value of the take-home of the
 * species' bodies cut in the month and the twelve before, over their weight into the boning room.
 * All values are those of the month's last day, so that months compare by weight and not by price.
 */
public final class ItemValues {
  private final Map<String, BigFraction> inForce = new HashMap<>();
  private final Map<Species, BigFraction> onRail = new EnumMap<>(Species.class);

  /** The values in force on {@code day}. */
  public ItemValues(List<ItemValue> values, LocalDate day) {
    values.stream()
        .filter(v -> v.from().filter(from -> from.isAfter(day)).isEmpty())
        .filter(v -> v.to().filter(to -> to.isBefore(day)).isEmpty())
        .forEach(v -> inForce.put(v.item(), Exact.fraction(v.value())));
  }

  /** The values in force on the last day of thirteen months. */
  ItemValues(MonthBodies months) {
    this(months.night().shop().values(), months.month().atEndOfMonth());
    var cut = months.cut();
    for (var species : Species.values()) {
      own(CutTree.ROOT)
          .or(
              () ->
                  BodyRate.of(BodyValue.on(BodyBalance::boning, MonthBody.of(species, cut), this)))
          .ifPresent(rate -> onRail.put(species, rate));
    }
  }

  /** Money in the major unit for a unit of weight of {@code item}; empty if it has no value. */
  public Optional<BigFraction> of(CutTree tree, String item) {
    return carrier(tree, item).flatMap(part -> own(part.id()));
  }

  private Optional<Item> carrier(CutTree tree, String item) {
    var path = tree.find(item).isPresent() ? tree.path(item) : List.<Item>of();
    for (int i = path.size() - 1; i > 0; i--) {
      if (inForce.containsKey(path.get(i).id())) {
        return Optional.of(path.get(i));
      }
    }
    return Optional.empty();
  }

  /**
   * The part whose value an end product of {@code item} has: the item itself or the nearest part
   * above it, and mince for trim without a value; empty if there is none.
   */
  public Optional<Item> ofProduct(CutTree tree, String item) {
    boolean isTrim = tree.find(item).filter(known -> known.kind() == Kind.TRIM).isPresent();
    return carrier(tree, item).or(() -> isTrim ? carrier(tree, CutTree.MINCE) : Optional.empty());
  }

  /** Money in the major unit for a unit of weight on the rail; empty where values are missing. */
  public Optional<BigFraction> onRail(Species species) {
    return Optional.ofNullable(onRail.get(species));
  }

  /**
   * By how much a unit of weight is worth more as mince than as bone: what meat left on the bone
   * loses. Bone without a value is worth nothing; empty if mince has no value.
   */
  public Optional<BigFraction> minceOverBone(CutTree tree) {
    var bone = of(tree, CutTree.BONE).orElse(BigFraction.ZERO);
    return of(tree, CutTree.MINCE).map(value -> value.subtract(bone));
  }

  /** Whether every item has the value that it has in {@code other}. */
  public boolean isSame(ItemValues other) {
    return inForce.equals(other.inForce);
  }

  private Optional<BigFraction> own(String item) {
    return Optional.ofNullable(inForce.get(item));
  }
}
