package gambrel.insight.month.bodies;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * End products of bodies: packs, tubs into batches and bins, without offal. Trim without a value of
 * its own has the value of mince; bone, fat and waste without a value are worth nothing.
 */
public final class Products {
  private Products() {}

  /**
   * The weight of one item.
   *
   * @param item its id
   * @param food whether people eat it; the part of an item that went into a bin is another product
   * @param net its weight
   */
  public record Product(String item, boolean food, Weight net) {}

  /**
   * What a piece was cut into.
   *
   * @param way the ids of the parts directly under the piece that are food, joined by blanks
   * @param products all end products of the piece
   */
  public record Made(String way, List<Product> products) {}

  private record Key(String item, boolean food) {}

  /** The end products of a body, in the order in which they were first weighed. */
  private static List<Product> of(BodyBalance body) {
    var byItem = new LinkedHashMap<Key, Weight>();
    for (var weighing : body.weighings().out()) {
      if (!body.weighings().isOffal(weighing)) {
        byItem.merge(
            new Key(weighing.item(), isFood(body, weighing)), weighing.net(), Weight::plus);
      }
    }
    return byItem.entrySet().stream()
        .map(e -> new Product(e.getKey().item(), e.getKey().food(), e.getValue()))
        .toList();
  }

  /** Whether a weighing is of food: meat or trim that did not go into a bin. */
  public static boolean isFood(BodyBalance body, Weighing product) {
    var kind = body.weighings().kind(product);
    return product.step() != Step.BIN && (kind == Kind.MEAT || kind == Kind.TRIM);
  }

  /** What each piece of a body that has parts was cut into, by the piece's id. */
  static Map<String, Made> made(BodyBalance body) {
    var products = of(body);
    var made = new HashMap<String, Made>();
    var tree = body.weighings().tree();
    var pieces =
        products.stream()
            .filter(product -> tree.find(product.item()).isPresent())
            .flatMap(product -> tree.path(product.item()).stream())
            .filter(item -> isChoice(tree, item))
            .distinct()
            .toList();
    for (var piece : pieces) {
      var under = products.stream().filter(p -> tree.isUnder(p.item(), piece.id())).toList();
      String way = way(under, piece, tree);
      if (!way.isEmpty()) {
        made.put(piece.id(), new Made(way, under));
      }
    }
    return made;
  }

  private static boolean isChoice(CutTree tree, Item item) {
    return (item.kind() == Kind.PIECE || item.kind() == Kind.MEAT)
        && !tree.children(item.id()).isEmpty();
  }

  private static String way(List<Product> under, Item piece, CutTree tree) {
    return under.stream()
        .filter(Product::food)
        .map(product -> part(tree, piece, product.item()))
        .distinct()
        .sorted(Comparator.comparingInt(tree::order))
        .collect(Collectors.joining(" "));
  }

  /** The part directly under {@code piece} that {@code item} belongs to, or the piece itself. */
  private static String part(CutTree tree, Item piece, String item) {
    var path = tree.path(item);
    int at = path.indexOf(piece);
    return path.get(Math.min(at + 1, path.size() - 1)).id();
  }

  /** What products are worth, in the major unit; empty if one of them has no value. */
  public static Optional<BigFraction> worth(
      Collection<Product> products, CutTree tree, ItemValues values) {
    var worth = BigFraction.ZERO;
    for (var product : products) {
      var value = value(product.item(), tree, values);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      worth = worth.add(value.get().multiply(product.net().fraction()));
    }
    return Optional.of(worth);
  }

  private static Optional<BigFraction> value(String item, CutTree tree, ItemValues values) {
    var own = values.of(tree, item);
    if (own.isPresent()) {
      return own;
    }
    return switch (tree.find(item).map(Item::kind).orElse(Kind.WASTE)) {
      case BONE, FAT, WASTE -> Optional.of(BigFraction.ZERO);
      case TRIM -> values.of(tree, CutTree.MINCE);
      default -> Optional.empty();
    };
  }

  /** The items without a value among the food of some bodies. */
  public static List<Item> unvalued(Collection<MonthBody> bodies, ItemValues values) {
    var missing = new LinkedHashSet<Item>();
    for (var body : bodies) {
      var tree = body.balance().weighings().tree();
      of(body.balance()).stream()
          .filter(Product::food)
          .filter(product -> worth(List.of(product), tree, values).isEmpty())
          .flatMap(product -> tree.find(product.item()).stream())
          .forEach(missing::add);
    }
    return List.copyOf(missing);
  }
}
