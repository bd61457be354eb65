package gambrel.month.value;

import gambrel.balance.BodyBalance;
import gambrel.balance.Drawn;
import gambrel.cuts.CutTree;
import gambrel.cuts.Kind;
import gambrel.measure.Weight;
import gambrel.measure.Worth;
import gambrel.month.ItemValues;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What end products of a body are worth: packs, tubs into batches and bins, offal left out. Trim
 * without a value of its own is worth what mince is, wherever it goes next; bone, fat and waste
 * without a value are worth nothing.
 */
final class Products {
  private static final Drawn<BodyBalance, List<Product>> ALL = new Drawn<>(Products::read);

  private final BodyBalance body;
  private final ItemValues values;

  /**
   * All of one item.
   *
   * @param item its id
   * @param food whether people eat it; what of it went into a bin stands apart
   * @param net its weight
   */
  record Product(String item, boolean food, Weight net) {}

  private record Key(String item, boolean food) {}

  Products(BodyBalance body, ItemValues values) {
    this.body = body;
    this.values = values;
  }

  private static List<Product> read(BodyBalance body) {
    var byItem = new LinkedHashMap<Key, Weight>();
    for (var weighing : body.weighings().out()) {
      if (!body.weighings().isOffal(weighing)) {
        byItem.merge(new Key(weighing.item(), isFood(body, weighing)), weighing.net(), Weight::plus);
      }
    }
    return byItem.entrySet().stream()
        .map(e -> new Product(e.getKey().item(), e.getKey().food(), e.getValue()))
        .toList();
  }

  private static boolean isFood(BodyBalance body, Weighing product) {
    var kind = body.weighings().kind(product);
    return product.step() != Step.BIN && (kind == Kind.MEAT || kind == Kind.TRIM);
  }

  /** All of them, in the order in which they were first weighed. */
  static List<Product> of(BodyBalance body) {
    return ALL.of(body);
  }

  /** Money in the major unit; empty where one of them has no value. */
  Optional<BigFraction> worth(Collection<Product> products) {
    var worth = new Worth();
    for (var product : products) {
      var value = value(product.item());
      if (value.isEmpty()) {
        return Optional.empty();
      }
      worth.add(product.net(), value.get());
    }
    return Optional.of(worth.sum());
  }

  private Optional<BigFraction> value(String item) {
    var tree = body.weighings().tree();
    var own = values.of(tree, item);
    if (own.isPresent()) {
      return own;
    }
    return switch (tree.find(item).map(found -> found.kind()).orElse(Kind.WASTE)) {
      case BONE, FAT, WASTE -> Optional.of(BigFraction.ZERO);
      case TRIM -> values.of(tree, CutTree.MINCE);
      default -> Optional.empty();
    };
  }
}
