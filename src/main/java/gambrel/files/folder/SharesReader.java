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

  private final IdIndex bodies;
  private final IdIndex customers;
  private final Map<String, Map<String, BigFraction>> shares = new TreeMap<>();

  private SharesReader(IdIndex bodies, IdIndex customers) {
    this.bodies = bodies;
    this.customers = customers;
  }

  /**
   * Gives bodies their shares; several rows of one customer add up. A share that cannot be read
   * counts as zero, so that the body never passes for one whose shares are known.
   */
  static SortedMap<String, Body> apply(
      ShopFolder folder, SortedMap<String, Body> bodies, IdIndex customers) {
    var reader = new SharesReader(new IdIndex(bodies.keySet()), customers);
    folder.eachEvenBroken(COLUMNS, reader::read);
    var owned = new TreeMap<>(bodies);
    reader.shares.forEach(
        (id, ofBody) -> owned.computeIfPresent(id, (same, body) -> body.withShares(ofBody)));
    return owned;
  }

  private void read(ShopRow row) {
    var named = bodies.find(row.text("body"));
    if (named.isEmpty()) {
      row.checked();
      row.needText("body");
    }
    String body = row.known("body", bodies).orElseThrow();
    row.about(body);
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
    row.checked();
    row.needText("customer");
    return row.need("share", CellTypes::share);
  }

  /** The sum of two shares; one that is unknown leaves it unknown. */
  private static BigFraction plus(BigFraction one, BigFraction other) {
    return one.signum() == 0 || other.signum() == 0 ? BigFraction.ZERO : one.add(other);
  }
}
