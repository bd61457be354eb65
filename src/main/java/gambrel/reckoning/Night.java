package gambrel.reckoning;

import gambrel.balance.BatchBalance;
import gambrel.measure.ByteOrder;
import gambrel.measure.Money;
import gambrel.notice.Notice;
import gambrel.shop.Payment;
import gambrel.shop.Shop;
import gambrel.weighing.Ledger;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;

/** Everything that is known of the shop at one moment. Immutable. */
public final class Night {
  private final Shop shop;
  private final OffsetDateTime asOf;
  private final Ledger ledger;
  private final SortedMap<String, BatchBalance> batches;
  private final SortedMap<String, BodyAccount> bodies;
  private final List<Notice> notices;
  private final Map<String, List<Payment>> payments;

  /**
   * Copies the collections.
   *
   * @param asOf the moment, at the shop's own offset
   * @param batches every batch, by id
   * @param bodies every body, by id
   * @param notices all that a person should know, but for set-aside rows and publishing
   */
  Night(
      Shop shop,
      OffsetDateTime asOf,
      Ledger ledger,
      SortedMap<String, BatchBalance> batches,
      SortedMap<String, BodyAccount> bodies,
      List<Notice> notices) {
    this.shop = shop;
    this.asOf = asOf;
    this.ledger = ledger;
    this.batches = Collections.unmodifiableSortedMap(ByteOrder.sorted(batches));
    this.bodies = Collections.unmodifiableSortedMap(ByteOrder.sorted(bodies));
    this.notices = List.copyOf(notices);
    this.payments = shop.payments().stream().collect(Collectors.groupingBy(Payment::body));
  }

  /** The shop folder. */
  public Shop shop() {
    return shop;
  }

  /** The moment, at the shop's own offset. */
  public OffsetDateTime asOf() {
    return asOf;
  }

  /** The exports. */
  public Ledger ledger() {
    return ledger;
  }

  /** Every batch, by id. */
  public SortedMap<String, BatchBalance> batches() {
    return batches;
  }

  /** Every body, by id. */
  public SortedMap<String, BodyAccount> bodies() {
    return bodies;
  }

  /** All that a person should know, but for set-aside rows and publishing. */
  public List<Notice> notices() {
    return notices;
  }

  /** The payments of a customer for a body by now, as listed. */
  public List<Payment> payments(String customer, String body) {
    return payments.getOrDefault(body, List.of()).stream()
        .filter(payment -> payment.customer().equals(customer))
        .filter(payment -> !payment.date().isAfter(asOf.toLocalDate()))
        .toList();
  }

  /** What a customer has paid for a body by now. */
  public Money paid(String customer, String body) {
    return payments(customer, body).stream().map(Payment::amount).reduce(Money.ZERO, Money::plus);
  }
}
