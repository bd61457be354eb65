package gambrel.trade.register;

import gambrel.trade.account.Bill;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.util.List;

/**
 * A charge of an issued statement, as it was issued.
 *
 * @param charge its id in the price list
 * @param description the text on the statement
 * @param quantity what was charged of the whole body, after the free quantity and the minimum
 * @param unit of the quantity: the shop's unit of weight, {@code head}, {@code pack}, {@code day}
 *     or {@code share}
 * @param price of one unit, as the price list has it; negative for a credit
 * @param amount the customer's part, without tax
 * @param taxPercent tax on the line, in per cent
 * @param tax the customer's part of the tax
 */
public record ChargeLine(
    String charge,
    String description,
    BigDecimal quantity,
    String unit,
    BigDecimal price,
    Money amount,
    BigDecimal taxPercent,
    Money tax) {
  /** The charges of a customer's statement in its order; {@code unit} is the shop's. */
  public static List<ChargeLine> of(Bill bill, String customer, WeightUnit unit) {
    return bill.printedLinesOf(customer).stream().map(l -> of(l, customer, unit)).toList();
  }

  private static ChargeLine of(Bill.Line line, String customer, WeightUnit unit) {
    var charge = line.charge();
    var part = line.parts().get(customer);
    var quantity = Exact.round(line.quantity(), Weight.OUTPUT_DECIMALS);
    boolean weight = charge.basis().isWeight();
    return new ChargeLine(
        charge.id(),
        charge.description(),
        weight ? quantity : quantity.stripTrailingZeros(),
        weight ? unit.id() : charge.basis().id(),
        charge.price(),
        part.net(),
        charge.taxPercent(),
        part.tax());
  }
}
