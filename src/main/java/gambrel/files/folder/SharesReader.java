package gambrel.files.folder;

import gambrel.trade.shop.Body;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.IdIndex;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads {@code shares.csv}. */
final class SharesReader {
  private static final Columns COLUMNS = Columns.of("shares.csv", "body", "customer", "share");

  private SharesReader() {}

  /**
   * The bodies with their shares; several rows of one customer add up. A share that cannot be read
   * counts as zero, so that the body's shares do not add up to 1.
   */
  static SortedMap<String, Body> apply(
      ShopFolder folder, SortedMap<String, Body> bodies, IdIndex customers) {
    var ids = new IdIndex(bodies.keySet());
    var shares = new TreeMap<String, Map<String, BigFraction>>();
    folder.eachEvenBroken(COLUMNS, row -> read(row, ids, customers, shares));
    var owned = new TreeMap<>(bodies);
    shares.forEach(
        (id, ofBody) -> owned.computeIfPresent(id, (k, body) -> body.withShares(ofBody)));
    return owned;
  }

  private static void read(
      ShopRow row,
      IdIndex bodies,
      IdIndex customers,
      Map<String, Map<String, BigFraction>> shares) {
    if (bodies.find(row.text("body")).isEmpty()) {
      row.checked().needText("body");
    }
    String body = row.known("body", bodies).orElseThrow();
    row.setBody(body);
    var ofBody = shares.computeIfAbsent(body, id -> new TreeMap<>());
    String given = row.knownOrKept("customer", customers);
    String customer = given.isEmpty() ? Customer.SHOP : given;
    try {
      ofBody.merge(customer, share(row), SharesReader::plus);
    } catch (ShopRow.RowRefused e) {
      ofBody.put(customer, BigFraction.ZERO);
      throw e;
    }
  }

  private static BigFraction share(ShopRow row) {
    row.checked().needText("customer");
    return row.need("share", CellTypes::share);
  }

  /** The sum of two shares; zero if one of them is zero, which means that it cannot be read. */
  private static BigFraction plus(BigFraction one, BigFraction other) {
    return one.signum() == 0 || other.signum() == 0 ? BigFraction.ZERO : one.add(other);
  }
}
