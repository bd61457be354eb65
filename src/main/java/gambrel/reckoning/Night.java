package gambrel.reckoning;

import gambrel.balance.BatchBalance;
import gambrel.measure.ByteOrder;
import gambrel.measure.Money;
import gambrel.notice.Notice;
import gambrel.shop.Shop;
import gambrel.weighing.Ledger;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;

/**
 * Everything that is known of the shop at one moment.
 *
 * @param shop the shop folder
 * @param asOf the moment, at the shop's own offset
 * @param ledger the exports
 * @param batches every batch, by id
 * @param bodies every body, by id
 * @param notices all that a person should know, but for set-aside rows and publishing
 */
public record Night(
    Shop shop,
    OffsetDateTime asOf,
    Ledger ledger,
    SortedMap<String, BatchBalance> batches,
    SortedMap<String, BodyAccount> bodies,
    List<Notice> notices) {
  /** Copies the collections. */
  public Night {
    batches = Collections.unmodifiableSortedMap(ByteOrder.sorted(batches));
    bodies = Collections.unmodifiableSortedMap(ByteOrder.sorted(bodies));
    notices = List.copyOf(notices);
  }

  /** What a customer has paid for a body by now. */
  public Money paid(String customer, String body) {
    return shop.payments().stream()
        .filter(p -> p.customer().equals(customer) && p.body().equals(body))
        .filter(p -> !p.date().isAfter(asOf.toLocalDate()))
        .map(p -> p.amount())
        .reduce(Money.ZERO, Money::plus);
  }
}
