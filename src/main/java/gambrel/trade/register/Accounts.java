package gambrel.trade.register;

import gambrel.trade.account.CustomerAccount;
import gambrel.trade.account.CustomerAccount.Statement;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** The accounts of customers: the statements in force and the payments up to a night. */
public final class Accounts {
  private Accounts() {}

  /** An account for each customer with a statement in force or a payment, by id. */
  public static List<CustomerAccount> of(Night night, Register register) {
    var statements = new TreeMap<String, List<Statement>>(ByteOrder.IDS);
    var others = new TreeMap<String, Money>(ByteOrder.IDS);
    for (var row : register.latest()) {
      var paid = night.paid(row.customer(), row.body());
      statements
          .computeIfAbsent(row.customer(), c -> new ArrayList<>())
          .add(
              new Statement(
                  row.body(),
                  register.since(row).toLocalDate(),
                  new CustomerMoney(row.charges(), row.tax(), paid)));
      others.merge(row.customer(), Money.ZERO.minus(paid), Money::plus);
    }
    night.shop().payments().stream()
        .filter(payment -> !payment.date().isAfter(night.asOf().toLocalDate()))
        .forEach(payment -> others.merge(payment.customer(), payment.amount(), Money::plus));
    return others.entrySet().stream()
        .map(
            other ->
                new CustomerAccount(
                    other.getKey(),
                    statements.getOrDefault(other.getKey(), List.of()),
                    other.getValue()))
        .toList();
  }
}
