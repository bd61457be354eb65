package gambrel.intake;

import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import gambrel.notice.NoticeCode;
import gambrel.shop.AccuracyClass;
import gambrel.shop.Batch;
import gambrel.shop.BenchEntry;
import gambrel.shop.Scale;
import gambrel.shop.ScaleCode;
import gambrel.shop.Step;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** Reads the tables that say how exports are to be understood, each in file order or by id. */
final class FloorTables {
  private FloorTables() {}

  /** {@code scales.csv}; a scale without a division or with a strange unit is left out. */
  static Map<String, Scale> scales(ShopFolder folder, WeightUnit shopUnit) {
    return folder.byId(
        Columns.of("scales.csv", "scale", "division")
            .and("where", "layout", "unit", "capacity", "class"),
        (id, row) ->
            new Scale(
                id,
                row.text("where"),
                row.text("layout"),
                row.get("unit", Formats::unit).orElse(shopUnit),
                row.need("division", Formats::positive),
                row.kindly("capacity", Formats::positive),
                row.kindly("class", FloorTables::accuracy)));
  }

  private static AccuracyClass accuracy(Formats formats, String text) {
    return AccuracyClass.of(text)
        .orElseThrow(() -> new BadCell("NOT_CLASS"));
  }

  /** {@code codes.csv}. */
  static List<ScaleCode> codes(ShopFolder folder, Known known) {
    var taken = new HashSet<String>();
    return folder.list(
        Columns.of("codes.csv", "code", "item", "step")
            .and("description", "tare", "tare_each", "nominal"),
        row -> {
          var code = code(row.newId("code", taken), row, known);
          taken.add(code.pattern());
          return code;
        });
  }

  private static ScaleCode code(String pattern, Row row, Known known) {
    int star = pattern.indexOf('*');
    if (star >= 0 && star < pattern.length() - 1) {
      throw row.refuse("code", new BadCell("EARLY_STAR"));
    }
    var step = row.need("step", Formats.word(Step.class));
    boolean needsItem = step.movesMass() && step != Step.ADDED;
    return new ScaleCode(
        pattern,
        needsItem ? known.neededItem(row, "item") : known.optionalItem(row, "item"),
        step,
        row.text("description"),
        row.get("tare", Formats::weight).orElse(Weight.ZERO),
        row.get("tare_each", Formats::yesNo).orElse(false),
        row.get("nominal", Formats::weight));
  }

  /**
   * {@code bench.csv}. A body or customer that is not known is kept: the rows that it would fill
   * must not pass for rows without an owner.
   */
  static List<BenchEntry> bench(ShopFolder folder, Known known) {
    return folder.list(
        Columns.of("bench.csv", "scale", "from", "to").and("body", "batch", "customer", "boner"),
        row -> {
          row.needText("scale");
          String scale = row.known("scale", known.scales()).orElseThrow();
          var from = row.need("from", Formats::moment);
          var to = row.need("to", Formats::lastMoment);
          if (to.isBefore(from)) {
            throw row.refuse(NoticeCode.SHOP_ROW_BAD, "TO_BEFORE_FROM");
          }
          String body = row.text("body");
          return new BenchEntry(
              scale,
              from,
              to,
              known.isTag(body) ? body : row.knownOrKept("body", known.bodies()),
              row.get("batch", Formats::id).orElse(""),
              row.knownOrKept("customer", known.customers()),
              row.text("boner"));
        });
  }

  /** {@code batches.csv}. */
  static Map<String, Batch> batches(ShopFolder folder) {
    return folder.byId(
        Columns.of("batches.csv", "batch").and("product", "made", "gain", "due", "added", "note"),
        (id, row) ->
            new Batch(
                id,
                row.text("product"),
                row.kindly("made", Formats::date),
                row.kindly("gain", Formats::yesNo).orElse(false),
                row.kindly("due", Formats::date),
                row.text("added"),
                row.text("note"),
                true));
  }
}
