package gambrel.intake;

import gambrel.shop.ItemValue;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code values.csv}. */
final class ValuesReader {
  private static final Columns COLUMNS =
      Columns.of("values.csv", "item", "value").and("from", "to");

  private ValuesReader() {}

  /** The values in file order. */
  static List<ItemValue> read(ShopFolder folder, Items items) {
    var values = new ArrayList<ItemValue>();
    folder.each(
        COLUMNS,
        row -> {
          var value =
              new ItemValue(
                  items.needed(row, "item"),
                  row.need("value", Formats::number),
                  row.get("from", Formats::date),
                  row.get("to", Formats::date));
          Period.check(row, value.from(), value.to());
          values.add(value);
        });
    return values;
  }
}
