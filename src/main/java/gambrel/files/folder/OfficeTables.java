package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.folder.ShopFolder.Table;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Charge;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Customer.Delivery;
import gambrel.trade.shop.ItemValue;
import gambrel.trade.shop.Payment;
import gambrel.trade.shop.Release;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** Reads the tables of customers, money and decisions. */
final class OfficeTables {
  private OfficeTables() {}

  /**
   * The customers of {@code customers.csv} by id. A name that cannot be read is the id, any other
   * cell that cannot be read is taken as blank.
   */
  static Map<String, Customer> customers(ShopFolder folder) {
    return folder.byId(
        Table.of("customers.csv", "customer name", "address email language delivery"),
        (id, row) -> {
          if (id.equals(Customer.SHOP)) {
            throw row.leaveOut(row.bad("SHOP_ITSELF"));
          }
          return new Customer(
              id,
              row.text("name", id),
              row.text("address"),
              row.text("email"),
              row.getOrBlank("language", CellTypes::language).orElse(""),
              row.getOrBlank("delivery", CellTypes.word(Delivery.class))
                  .orElse(row.text("email").isEmpty() ? Delivery.PRINT : Delivery.EMAIL));
        });
  }

  /**
   * The charges of {@code charges.csv} in file order. One id may have several rows if they differ
   * in what they apply to or when.
   */
  static List<Charge> charges(ShopFolder folder, Known known) {
    var taken = new HashSet<List<Object>>();
    return folder.list(
        Table.of(
            "charges.csv",
            "charge description basis price",
            "minimum free species class item body hot_from hot_to tax_percent from to"),
        row -> {
          var charge = charge(row, known);
          row.checkPeriod(charge.from(), charge.to());
          if (!taken.add(scope(charge))) {
            throw row.leaveOut(row.cell(Notice.of(NoticeCode.ID_TWICE, row.place()), "charge"));
          }
          return charge;
        });
  }

  private static Charge charge(ShopRow row, Known known) {
    return new Charge(
        row.need("charge", CellTypes::id),
        row.needText("description"),
        row.need("basis", CellTypes.word(Charge.Basis.class)),
        row.need("price", CellTypes::number),
        notNegative(row, "minimum"),
        notNegative(row, "free"),
        row.get("species", CellTypes.word(Species.class)).map(Species::id).orElse(""),
        row.text("class"),
        known.item(row),
        row.known("body", known.bodies()).orElse(""),
        row.get("hot_from", CellTypes::weight),
        row.get("hot_to", CellTypes::weight),
        notNegative(row, "tax_percent"),
        row.get("from", CellTypes::date),
        row.get("to", CellTypes::date));
  }

  private static BigDecimal notNegative(ShopRow row, String column) {
    return row.get(column, CellTypes::notNegative).orElse(BigDecimal.ZERO);
  }

  private static List<Object> scope(Charge charge) {
    return List.of(
        charge.id(),
        charge.basis(),
        charge.species(),
        charge.category(),
        charge.item(),
        charge.body(),
        charge.hotFrom(),
        charge.hotTo(),
        charge.from(),
        charge.to());
  }

  /** The values of {@code values.csv} in file order. */
  static List<ItemValue> values(ShopFolder folder, Known known) {
    return folder.list(
        Table.of("values.csv", "item value", "from to"),
        row -> {
          row.needText("item");
          var value =
              new ItemValue(
                  known.item(row),
                  row.need("value", CellTypes::number),
                  row.get("from", CellTypes::date),
                  row.get("to", CellTypes::date));
          row.checkPeriod(value.from(), value.to());
          return value;
        });
  }

  /** The payments of {@code payments.csv} in file order. */
  static List<Payment> payments(ShopFolder folder, Known known) {
    return folder.list(
        Table.of("payments.csv", "customer date amount", "body note"),
        row -> {
          row.needText("customer");
          return new Payment(
              row.knownOrKept("customer", known.customers()),
              row.knownOrKept("body", known.bodies()),
              row.need("date", CellTypes::date),
              row.need("amount", CellTypes::money),
              row.text("note"));
        });
  }

  /** The corrections of {@code corrections.csv} in file order. */
  static List<Correction> corrections(ShopFolder folder, Known known) {
    return folder.list(
        Table.of("corrections.csv", "scale ticket field value by on reason", "date"),
        row -> {
          row.needText("scale");
          var field = row.need("field", OfficeTables::field);
          if (field.isId()) {
            row.get("value", CellTypes::id);
          }
          return new Correction(
              row.knownOrKept("scale", known.scales()),
              row.need("ticket", OfficeTables::ticket),
              row.get("date", CellTypes::date),
              field.id(),
              row.text("value"),
              row.needText("by"),
              row.need("on", CellTypes::moment),
              row.needText("reason"),
              row.place());
        });
  }

  /** A ticket, a run of tickets, or the place of a row. */
  static String ticket(CellTypes types, String text) {
    return types.id(CellTypes.notDate(text, "LOST_RUN"));
  }

  /** A field that a correction may change. */
  static Field field(CellTypes types, String text) {
    return Field.of(text)
        .filter(field -> field != Field.SCALE && field != Field.TICKET)
        .orElseThrow(() -> new BadCell("NOT_CORRECTABLE"));
  }

  /** The releases of {@code releases.csv} in file order; a row without an action releases. */
  static List<Release> releases(ShopFolder folder, Known known) {
    return folder.list(
        Table.of("releases.csv", "body by on reason", "action"),
        row -> {
          String body = row.needKnown("body", known.bodies());
          row.setBody(body);
          return new Release(
              body,
              row.needText("by"),
              row.need("on", CellTypes::moment),
              row.needText("reason"),
              row.get("action", CellTypes.word(Release.Action.class))
                  .orElse(Release.Action.RELEASE),
              row.place());
        });
  }
}
