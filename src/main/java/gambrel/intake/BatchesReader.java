package gambrel.intake;

import gambrel.shop.Batch;
import java.util.Map;
import java.util.TreeMap;

/** Reads {@code batches.csv}. */
final class BatchesReader {
  private static final Columns COLUMNS =
      Columns.of("batches.csv", "batch").and("product", "made", "gain", "due", "added", "note");

  private BatchesReader() {}

  /** The listed batches by id. */
  static Map<String, Batch> read(ShopFolder folder) {
    var batches = new TreeMap<String, Batch>();
    folder.each(
        COLUMNS,
        row -> {
          String id = row.newId("batch", batches.keySet());
          batches.put(
              id,
              new Batch(
                  id,
                  row.text("product"),
                  row.kindly("made", Formats::date),
                  row.kindly("gain", Formats::yesNo).orElse(false),
                  row.kindly("due", Formats::date),
                  row.text("added"),
                  row.text("note"),
                  true));
        });
    return batches;
  }
}
