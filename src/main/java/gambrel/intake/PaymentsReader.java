package gambrel.intake;

import gambrel.shop.Payment;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code payments.csv}. */
final class PaymentsReader {
  private static final Columns COLUMNS =
      Columns.of("payments.csv", "customer", "date", "amount").and("body", "note");

  private PaymentsReader() {}

  /** The payments in file order. */
  static List<Payment> read(ShopFolder folder, Ids ids) {
    var payments = new ArrayList<Payment>();
    folder.each(
        COLUMNS,
        row -> {
          row.needText("customer");
          payments.add(
              new Payment(
                  row.knownOrKept("customer", ids.customers()),
                  row.knownOrKept("body", ids.bodies()),
                  row.need("date", Formats::date),
                  row.need("amount", Formats::money),
                  row.text("note")));
        });
    return payments;
  }
}
