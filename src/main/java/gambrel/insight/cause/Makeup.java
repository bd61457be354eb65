package gambrel.insight.cause;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What came of a body on the block, by product; without offal and rail trim.
 *
 * @param nets the weighings of each product that it has, in hundred-thousandths of the shop's unit
 */
record Makeup(Map<Product, List<Long>> nets) {
  /** Copies the map. */
  Makeup {
    nets = Map.copyOf(nets);
  }

  /**
   * A product of the block.
   *
   * @param step pack, tub or bin
   * @param item the item packed; of a bin bone, fat or waste
   */
  record Product(Step step, String item) implements Comparable<Product> {
    private static final Comparator<Product> ORDER =
        Comparator.comparing(Product::step).thenComparing(Product::item);

    @Override
    public int compareTo(Product other) {
      return ORDER.compare(this, other);
    }

    /** The product that a weighing of a body is. */
    static Product of(BodyBalance balance, Weighing weighing) {
      return new Product(
          weighing.step(),
          weighing.step() == Step.BIN
              ? balance.weighings().binKind(weighing).id()
              : weighing.item());
    }
  }

  /** What came of a body. */
  static Makeup of(BodyBalance balance) {
    return new Makeup(
        balance.outOfBoning().stream()
            .collect(
                Collectors.groupingBy(
                    weighing -> Product.of(balance, weighing),
                    Collectors.mapping(w -> w.net().hundredThousandths(), Collectors.toList()))));
  }

  /** The products that it has. */
  Set<Product> products() {
    return nets.keySet();
  }

  /** How many of a hundred products that one of the two has are of both. */
  long likeness(Makeup other) {
    long common = products().stream().filter(other.products()::contains).count();
    return common * 100 / Math.max(1, products().size() + other.products().size() - common);
  }

  /** The weighings of a product. */
  List<Long> each(Product product) {
    return nets.getOrDefault(product, List.of());
  }

  /** The weight of a product, in hundred-thousandths of the shop's unit. */
  long weight(Product product) {
    return each(product).stream().mapToLong(net -> net).sum();
  }
}
