package gambrel.trade.account;

import gambrel.trade.measure.Money;
import gambrel.trade.shop.Charge;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a body costs its owners.
 *
 * @param lines in the order of the price list
 * @param unknown charges whose quantity is not known
 */
public record Bill(List<Line> lines, List<Charge> unknown) {
  /** A bill without charges. */
  public static final Bill NONE = new Bill(List.of(), List.of());

  /** Copies the lists. */
  public Bill {
    lines = List.copyOf(lines);
    unknown = List.copyOf(unknown);
  }

  /**
   * One charge.
   *
   * @param charge its row of the price list
   * @param quantity what it counts, after the free quantity and the minimum
   * @param amount for the whole body, as the price list has it (tax included or not)
   * @param tax for the whole body
   * @param parts each customer's part
   */
  public record Line(
      Charge charge,
      BigFraction quantity,
      Money amount,
      Money tax,
      SortedMap<String, Part> parts) {}

  /**
   * A customer's part of a line.
   *
   * @param net without tax
   * @param tax the tax
   */
  public record Part(Money net, Money tax) {}

  /** The lines in which a customer has a part. */
  public List<Line> linesOf(String customer) {
    return lines.stream().filter(line -> line.parts().containsKey(customer)).toList();
  }

  /** The lines that a customer's statement prints: those that cost something. */
  public List<Line> printedLinesOf(String customer) {
    return linesOf(customer).stream().filter(line -> !line.amount().equals(Money.ZERO)).toList();
  }

  /** A customer's charges without tax. */
  public Money net(String customer) {
    return Money.sum(partsOf(customer).map(Part::net));
  }

  /** All customers' charges without tax. */
  public Money net() {
    return Money.sum(lines.stream().flatMap(line -> line.parts().values().stream()).map(Part::net));
  }

  /** A customer's tax. */
  public Money tax(String customer) {
    return Money.sum(partsOf(customer).map(Part::tax));
  }

  private Stream<Part> partsOf(String customer) {
    return linesOf(customer).stream().map(line -> line.parts().get(customer));
  }
}
