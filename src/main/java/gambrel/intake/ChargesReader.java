package gambrel.intake;

import gambrel.cuts.Species;
import gambrel.notice.NoticeCode;
import gambrel.shop.Charge;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads {@code charges.csv}. */
final class ChargesReader {
  private static final Columns COLUMNS =
      Columns.of("charges.csv", "charge", "description", "basis", "price")
          .and(
              "minimum",
              "free",
              "species",
              "class",
              "item",
              "body",
              "hot_from",
              "hot_to",
              "tax_percent",
              "from",
              "to");

  private final Items items;
  private final Ids ids;
  private final Set<List<Object>> taken = new HashSet<>();

  private ChargesReader(Items items, Ids ids) {
    this.items = items;
    this.ids = ids;
  }

  /**
   * The charges in file order. One key may stand in several rows that differ in what or when they
   * apply to.
   */
  static List<Charge> read(ShopFolder folder, Items items, Ids ids) {
    var reader = new ChargesReader(items, ids);
    var charges = new ArrayList<Charge>();
    folder.each(
        COLUMNS,
        row -> {
          var charge = reader.charge(row);
          if (!reader.taken.add(scope(charge))) {
            throw row.refuse(NoticeCode.ID_TWICE, "charge", charge.id());
          }
          charges.add(charge);
        });
    return charges;
  }

  private Charge charge(Row row) {
    var charge =
        new Charge(
            row.need("charge", Formats::id),
            row.needText("description"),
            row.need("basis", Formats.word(Charge.Basis.class)),
            row.need("price", Formats::number),
            notNegative(row, "minimum"),
            notNegative(row, "free"),
            row.get("species", Formats.word(Species.class)).map(Species::id).orElse(""),
            row.text("class"),
            items.optional(row, "item"),
            row.known("body", ids.bodies()).orElse(""),
            row.get("hot_from", Formats::weight),
            row.get("hot_to", Formats::weight),
            notNegative(row, "tax_percent"),
            row.get("from", Formats::date),
            row.get("to", Formats::date));
    Period.check(row, charge.from(), charge.to());
    return charge;
  }

  private static BigDecimal notNegative(Row row, String column) {
    return row.get(column, Formats::notNegative).orElse(BigDecimal.ZERO);
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
}
