package gambrel.intake;

import gambrel.measure.WeightUnit;
import gambrel.shop.AccuracyClass;
import gambrel.shop.Scale;
import java.util.Map;
import java.util.TreeMap;

/** Reads {@code scales.csv}. */
final class ScalesReader {
  private static final Columns COLUMNS =
      Columns.of("scales.csv", "scale", "division")
          .and("where", "layout", "unit", "capacity", "class");

  private ScalesReader() {}

  /** The scales by id; one without a division or with a strange unit is left out. */
  static Map<String, Scale> read(ShopFolder folder, WeightUnit shopUnit) {
    var scales = new TreeMap<String, Scale>();
    folder.each(
        COLUMNS,
        row -> {
          String id = row.newId("scale", scales.keySet());
          scales.put(
              id,
              new Scale(
                  id,
                  row.text("where"),
                  row.text("layout"),
                  row.get("unit", Formats::unit).orElse(shopUnit),
                  row.need("division", Formats::positive),
                  row.kindly("capacity", Formats::positive),
                  row.kindly("class", ScalesReader::accuracy)));
        });
    return scales;
  }

  private static AccuracyClass accuracy(Formats formats, String text) {
    return AccuracyClass.of(text)
        .orElseThrow(
            () -> new BadCell("NOT_CLASS"));
  }
}
