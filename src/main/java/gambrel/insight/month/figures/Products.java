package gambrel.insight.month.figures;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

  /** The end products of a body, in the order in which they were first weighed. */
  private static List<Product> of(BodyBalance body) {
    var products = body.weighings().out().stream().filter(w -> !body.weighings().isOffal(w));
    return Groups.inOrder(products, w -> Map.entry(w.item(), isFood(body, w))).entrySet().stream()
        .map(
            of ->
                new Product(
                    of.getKey().getKey(), of.getKey().getValue(), Weighing.total(of.getValue())))
        .toList();
  }

  /** Whether a weighing is of food: meat or trim that did not go into a bin. */
  public static boolean isFood(BodyBalance body, Weighing product) {
    return isTakenHome(product) && body.weighings().isMeat(product);
  }

  /** Whether an end product is a pack or a tub into a batch, and not in a bin. */
  static boolean isTakenHome(Weighing product) {
    return product.step() != Step.BIN;
  }

  /** The net weights of some weighings by a property, such as the item. */
  static SortedMap<String, Weight> weights(
      Stream<Weighing> weighings, Function<Weighing, String> property) {
    return weighings.collect(Collectors.toMap(property, Weighing::net, Weight::plus, TreeMap::new));
  }

  /**
   * The ids of the items packed on the bone, joined by blanks; empty for a body boned out. An item
   * counts from a hundredth of the weight into the boning room on.
   */
  static String style(BodyBalance body) {
    var tree = body.weighings().tree();
    var packed =
        weights(
            body.weighings().out().stream()
                .filter(w -> isTakenHome(w) && tree.facts(w.item()).isOnBone()),
            Weighing::item);
    var boning = body.boning().orElse(Weight.ZERO).fraction();
    packed.values().removeIf(weight -> weight.fraction().multiply(100).compareTo(boning) < 0);
    return String.join(" ", packed.keySet());
  }

  /**
   * What went home or into tubs of each primal, as a share of the weight into the boning room, by
   * the primal's id. The primal of an item is the first part below side and quarter; items that
   * belong to no side or quarter are left out.
   */
  static Map<String, Share> primals(BodyBalance body) {
    var tree = body.weighings().tree();
    var weights =
        weights(
            body.outOfBoning().stream().filter(Products::isTakenHome), w -> primal(tree, w.item()));
    weights.remove("");
    weights.values().removeIf(Weight::isZero);
    var shares = new HashMap<String, Share>();
    weights.forEach(
        (primal, weight) ->
            Share.of(Optional.of(weight), body.boning()).ifPresent(s -> shares.put(primal, s)));
    return shares;
  }

  /** The first part on the way down that is no side or quarter; empty if none is above it. */
  private static String primal(CutTree tree, String item) {
    return path(tree, item)
        .filter(part -> part.kind() != Kind.CARCASE)
        .findFirst()
        .filter(part -> !part.parent().equals(CutTree.ROOT))
        .map(Item::id)
        .orElse("");
  }

  /** The items from the root down to this one; none if the tree lacks it. */
  private static Stream<Item> path(CutTree tree, String item) {
    return tree.find(item).stream().flatMap(known -> tree.path(known.id()).stream());
  }

  /** What each piece of a body that has parts was cut into, by the piece's id. */
  static Map<String, Made> made(BodyBalance body) {
    var tree = body.weighings().tree();
    var under = new HashMap<String, List<Product>>();
    for (var product : of(body)) {
      path(tree, product.item())
          .filter(piece -> isChoice(tree, piece))
          .forEach(piece -> under.computeIfAbsent(piece.id(), p -> new ArrayList<>()).add(product));
    }
    var made = new HashMap<String, Made>();
    under.forEach((piece, all) -> made.put(piece, new Made(way(all, piece, tree), all)));
    made.values().removeIf(one -> one.way().isEmpty());
    return made;
  }

  private static boolean isChoice(CutTree tree, Item item) {
    return (item.kind() == Kind.PIECE || item.kind() == Kind.MEAT)
        && !tree.children(item.id()).isEmpty();
  }

  private static String way(List<Product> under, String piece, CutTree tree) {
    return under.stream()
        .filter(Product::food)
        .map(product -> part(tree, piece, product.item()))
        .distinct()
        .sorted(Comparator.comparingInt(tree::order))
        .collect(Collectors.joining(" "));
  }

  /** The part directly under {@code piece} that {@code item} belongs to, or the piece itself. */
  private static String part(CutTree tree, String piece, String item) {
    var path = tree.path(item);
    return path.get(Math.min(tree.path(piece).size(), path.size() - 1)).id();
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
    var kind = tree.find(item).map(Item::kind).orElse(Kind.WASTE);
    boolean isLeft = kind == Kind.BONE || kind == Kind.FAT || kind == Kind.WASTE;
    return values
        .ofProduct(tree, item)
        .flatMap(part -> values.of(tree, part.id()))
        .or(() -> isLeft ? Optional.of(BigFraction.ZERO) : Optional.empty());
  }

  /** The items without a value among the food of some bodies. */
  public static List<Item> unvalued(Collection<MonthBody> bodies, ItemValues values) {
    var missing = new LinkedHashSet<Item>();
    for (var body : bodies) {
      var tree = body.balance().weighings().tree();
      of(body.balance()).stream()
          .filter(product -> product.food() && value(product.item(), tree, values).isEmpty())
          .flatMap(product -> tree.find(product.item()).stream())
          .forEach(missing::add);
    }
    return List.copyOf(missing);
  }
}
