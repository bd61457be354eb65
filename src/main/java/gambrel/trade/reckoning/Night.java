package gambrel.trade.reckoning;

import gambrel.trade.account.CustomerMoney;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.decision.Decision;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.State;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Money;
import gambrel.trade.notice.Notice;
import gambrel.trade.shop.Payment;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.Ledger;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The figures, decisions and notices of a shop at one moment.
 *
 * @param shop the shop folder
 * @param asOf the moment, at the shop's own offset
 * @param ledger the exports
 * @param batches every batch, by id
 * @param bodies every body, by id
 * @param notices all notices, except those about set-aside rows and about publishing
 * @param payments the shop's payments by body, in file order
 */
public record Night(
    Shop shop,
    OffsetDateTime asOf,
    Ledger ledger,
    SortedMap<String, BatchBalance> batches,
    SortedMap<String, BodyAccount> bodies,
    List<Notice> notices,
    Map<String, List<Payment>> payments) {
  /** Copies the collections. */
  public Night {
    batches = ByteOrder.sorted(batches);
    bodies = ByteOrder.sorted(bodies);
    notices = List.copyOf(notices);
    payments = Map.copyOf(payments);
  }

  /** The same night with bodies held for further reasons; each has its notice. */
  public Night holding(Map<String, List<Reason>> reasons) {
    var changed = new TreeMap<>(bodies);
    var more = new ArrayList<>(notices);
    reasons.forEach(
        (body, why) -> {
          var account = bodies.get(body);
          var decision = new Decision(State.HELD, why, account.decision().released());
          var held =
              new BodyAccount(account.balance(), account.entitlements(), account.bill(), decision);
          changed.put(body, held);
          more.add(FigureNotices.held(held));
        });
    return new Night(shop, asOf, ledger, batches, changed, more, payments);
  }

  /** Whether a customer has a part of a body that is not cancelled. */
  public boolean isOwner(String customer, String body) {
    var account = bodies.get(body);
    return account != null
        && account.decision().state() != State.CANCELLED
        && account.customers().contains(customer);
  }

  /** The moment under which the register keeps what this night issues, in whole seconds. */
  public LocalDateTime issueTime() {
    return asOf.toLocalDateTime().withNano(0);
  }

  /** A customer's payments for a body, dated {@code asOf} or earlier, in file order. */
  public List<Payment> payments(String customer, String body) {
    return payments.getOrDefault(body, List.of()).stream()
        .filter(payment -> payment.customer().equals(customer))
        .filter(payment -> !payment.date().isAfter(asOf.toLocalDate()))
        .toList();
  }

  /** The sum of those payments. */
  public Money paid(String customer, String body) {
    return Money.sum(payments(customer, body).stream().map(Payment::amount));
  }

  /** A customer's charges, tax and payments for a body. */
  public CustomerMoney money(BodyAccount account, String customer) {
    var bill = account.bill();
    return new CustomerMoney(
        bill.net(customer), bill.tax(customer), paid(customer, account.body().id()));
  }
}
