package gambrel.intake;

import gambrel.notice.NoticeCode;
import gambrel.shop.Customer;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads {@code customers.csv}. */
final class CustomersReader {
  private static final Columns COLUMNS =
      Columns.of("customers.csv", "customer", "name").and("address", "email", "language");

  private CustomersReader() {}

  /** The customers by id. */
  static SortedMap<String, Customer> read(ShopFolder folder) {
    var customers = new TreeMap<String, Customer>();
    folder.each(
        COLUMNS,
        row -> {
          String id = row.newId("customer", customers.keySet());
          if (id.equals(Customer.SHOP)) {
            throw row.refuse(NoticeCode.SHOP_ROW_BAD, "SHOP_ITSELF");
          }
          customers.put(
              id,
              new Customer(
                  id,
                  row.needText("name"),
                  row.text("address"),
                  row.text("email"),
                  row.kindly("language", Formats::language).orElse("")));
        });
    return customers;
  }
}
