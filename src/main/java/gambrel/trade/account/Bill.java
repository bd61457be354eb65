package gambrel.trade.account;

import gambrel.trade.measure.Money;
import gambrel.trade.shop.Charge;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
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
      Charge charge, BigFraction quantity, Money amount, Money tax, SortedMap<String, Part> parts) {
    /** Whether the shop pays for it. */
    public boolean isCredit() {
      return charge.price().signum() < 0;
    }
  }

  /**
   * A customer's part of a line.
   *
   * @param net without tax
   * @param tax the tax
   */
  public record Part(Money net, Money tax) {
    /** With tax. */
    public Money total() {
      return net.plus(tax);
    }

    /** Both parts together. */
    Part plus(Part other) {
      return new Part(net.plus(other.net), tax.plus(other.tax));
    }
  }

  /** The lines in which a customer has a part. */
  public List<Line> linesOf(String customer) {
    return lines.stream().filter(line -> line.parts().containsKey(customer)).toList();
  }

  /** The lines that a customer's statement prints: those that cost something. */
  public List<Line> printedLinesOf(String customer) {
    return linesOf(customer).stream().filter(line -> !line.amount().equals(Money.ZERO)).toList();
  }

  /** The lines that charge something. */
  public Bill sales() {
    return new Bill(lines.stream().filter(line -> !line.isCredit()).toList(), unknown);
  }

  /** The lines that pay the customers for something, such as a hide that the shop keeps. */
  public Bill credits() {
    return new Bill(lines.stream().filter(Line::isCredit).toList(), List.of());
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

  /** A customer's charges by rate of tax, in per cent; none if there is no tax at any rate. */
  public SortedMap<BigDecimal, Part> byRate(String customer) {
    var rates = new TreeMap<BigDecimal, Part>();
    for (var line : printedLinesOf(customer)) {
      rates.merge(
          line.charge().taxPercent().stripTrailingZeros(), line.parts().get(customer), Part::plus);
    }
    boolean taxed = rates.keySet().stream().anyMatch(rate -> rate.signum() != 0);
    return taxed ? rates : new TreeMap<>();
  }

  private Stream<Part> partsOf(String customer) {
    return linesOf(customer).stream().map(line -> line.parts().get(customer));
  }
}
