package gambrel.intake;

import gambrel.measure.Weight;
import gambrel.shop.ScaleCode;
import gambrel.shop.Step;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/** Reads {@code codes.csv}. */
final class CodesReader {
  private static final Columns COLUMNS =
      Columns.of("codes.csv", "code", "item", "step")
          .and("description", "tare", "tare_each", "nominal");

  private final Items items;

  private CodesReader(Items items) {
    this.items = items;
  }

  /** The codes in file order. */
  static List<ScaleCode> read(ShopFolder folder, Items items) {
    var reader = new CodesReader(items);
    var codes = new ArrayList<ScaleCode>();
    var taken = new HashSet<String>();
    folder.each(
        COLUMNS,
        row -> {
          codes.add(reader.code(row.newId("code", taken), row));
          taken.add(row.text("code"));
        });
    return codes;
  }

  private ScaleCode code(String pattern, Row row) {
    int star = pattern.indexOf('*');
    if (star >= 0 && star < pattern.length() - 1) {
      throw row.refuse("code", new BadCell("EARLY_STAR"));
    }
    var step = row.need("step", Formats.word(Step.class));
    return new ScaleCode(
        pattern,
        needsItem(step) ? items.needed(row, "item") : items.optional(row, "item"),
        step,
        row.text("description"),
        row.get("tare", Formats::weight).orElse(Weight.ZERO),
        row.get("tare_each", Formats::yesNo).orElse(false),
        row.get("nominal", Formats::weight));
  }

  private static boolean needsItem(Step step) {
    return step.movesMass() && step != Step.ADDED;
  }
}
