package gambrel.trade.account;

import gambrel.trade.measure.Money;

/**
 * What a customer is charged and has paid for a body.
 *
 * @param net charges without tax
 * @param tax on them
 * @param paid payments so far
 */
public record CustomerMoney(Money net, Money tax, Money paid) {
  /** Charges with tax. */
  public Money total() {
    return net.plus(tax);
  }

  /** What is left to pay; below zero if the shop owes it. */
  public Money due() {
    return total().minus(paid);
  }
}
