package gambrel.wording;

import gambrel.measure.Money;

/**
 * What a customer is charged and has paid for a body.
 *
 * @param net charges without tax
 * @param tax on them
 * @param paid by now
 */
record CustomerMoney(Money net, Money tax, Money paid) {

  static CustomerMoney of(Subject subject) {
    var bill = subject.account().bill();
    String customer = subject.customer();
    return new CustomerMoney(
        bill.net(customer),
        bill.tax(customer),
        subject.night().paid(customer, subject.body().id()));
  }

  /** Charges with tax. */
  Money total() {
    return net.plus(tax);
  }

  /** What is left to pay; below zero where the shop owes. */
  Money due() {
    return total().minus(paid);
  }
}
