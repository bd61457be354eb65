package gambrel.insight.cause;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;

/**
 * What came of a body on the block, by product; without offal and rail trim.
 *
 * @param amounts products that it has not are missing
 */
record Makeup(Map<Product, Amount> amounts) {
  /** Copies the map. */
  Makeup {
    amounts = Map.copyOf(amounts);
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

  /**
   * How much there is of a product, or by how much that changes.
   *
   * @param weight in hundred-thousandths of the shop's unit
   * @param count the number of weighings
   */
  record Amount(long weight, long count) {
    static final Amount NONE = new Amount(0, 0);

    Amount plus(Amount other) {
      return new Amount(weight + other.weight, count + other.count);
    }
  }

  /** What came of a body. */
  static Makeup of(BodyBalance balance) {
    var amounts = new HashMap<Product, Amount>();
    balance
        .outOfBoning()
        .forEach(
            weighing ->
                amounts.merge(
                    Product.of(balance, weighing),
                    new Amount(weighing.net().hundredThousandths(), 1),
                    Amount::plus));
    return new Makeup(amounts);
  }

  /** How much there is of a product. */
  Amount of(Product product) {
    return amounts.getOrDefault(product, Amount.NONE);
  }
}
