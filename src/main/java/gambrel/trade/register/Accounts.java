package gambrel.trade.register;

import gambrel.trade.account.CustomerAccount;
import gambrel.trade.account.CustomerAccount.Statement;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The accounts of customers: the statements in force and the payments up to a night. */
public final class Accounts {
  private Accounts() {}

  /** An account for each customer with a statement in force or a payment, by id. */
  public static List<CustomerAccount> of(Night night, Register register) {
    return List.copyOf(of(night, register, List.of()).values());
  }

  /** The accounts by customer as they are once statements are issued. */
  public static Map<String, CustomerAccount> of(
      Night night, Register register, List<Planned> issued) {
    var statements = new TreeMap<String, Map<String, Statement>>(ByteOrder.IDS);
    var others = new TreeMap<String, Money>(ByteOrder.IDS);
    for (var row : register.latest()) {
      var paid = night.paid(row.customer(), row.body());
      var money = new CustomerMoney(row.charges(), row.tax(), paid);
      add(statements, row.customer(), row.body(), register.since(row).toLocalDate(), money);
    }
    for (var planned : issued) {
      var since = planned.replaces().map(register::since).orElse(night.issueTime()).toLocalDate();
      var money = night.money(planned.account(), planned.customer());
      add(statements, planned.customer(), planned.body(), since, money);
    }
    night.shop().payments().stream()
        .filter(payment -> !payment.date().isAfter(night.asOf().toLocalDate()))
        .forEach(payment -> others.merge(payment.customer(), payment.amount(), Money::plus));
    var accounts = new TreeMap<String, CustomerAccount>(ByteOrder.IDS);
    statements.forEach((customer, of) -> others.putIfAbsent(customer, Money.ZERO));
    others.forEach(
        (customer, all) -> {
          var of = statements.getOrDefault(customer, Map.of()).values();
          var named = Money.sum(of.stream().map(statement -> statement.money().paid()));
          accounts.put(customer, new CustomerAccount(customer, List.copyOf(of), all.minus(named)));
        });
    return accounts;
  }

  private static void add(
      Map<String, Map<String, Statement>> statements,
      String customer,
      String body,
      LocalDate since,
      CustomerMoney money) {
    statements
        .computeIfAbsent(customer, c -> new TreeMap<>(ByteOrder.IDS))
        .put(body, new Statement(body, since, money));
  }
}
