package gambrel.intake;

import gambrel.shop.Body;
import gambrel.shop.Customer;
import gambrel.shop.IdIndex;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads {@code shares.csv}. */
final class SharesReader {
  private static final Columns COLUMNS = Columns.of("shares.csv", "body", "customer", "share");

  private SharesReader() {}

  /**
   * Gives bodies their shares; several rows of one customer add up. A share that cannot be read
   * counts as zero, so that the body never passes for one whose shares are known.
   */
  static SortedMap<String, Body> apply(
      ShopFolder folder, SortedMap<String, Body> bodies, IdIndex customers) {
    var index = new IdIndex(bodies.keySet());
    var shares = new TreeMap<String, Map<String, BigFraction>>();
    folder.each(
        COLUMNS,
        row -> {
          row.needText("body");
          String body = row.known("body", index).orElseThrow();
          row.about(body);
          var ofBody = shares.computeIfAbsent(body, id -> new TreeMap<>());
          String named = row.knownOrKept("customer", customers);
          String customer = named.isEmpty() ? Customer.SHOP : named;
          try {
            ofBody.merge(customer, share(row), SharesReader::plus);
          } catch (RowRefused e) {
            ofBody.put(customer, BigFraction.ZERO);
            throw e;
          }
        });
    var owned = new TreeMap<>(bodies);
    shares.forEach((id, ofBody) -> owned.computeIfPresent(id, (i, b) -> b.withShares(ofBody)));
    return owned;
  }

  private static BigFraction share(Row row) {
    row.needText("customer");
    return row.need("share", Formats::share);
  }

  /** The sum of two shares; one that is unknown leaves it unknown. */
  private static BigFraction plus(BigFraction one, BigFraction other) {
    return one.signum() == 0 || other.signum() == 0 ? BigFraction.ZERO : one.add(other);
  }
}
