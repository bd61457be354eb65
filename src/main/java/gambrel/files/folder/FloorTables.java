package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.AccuracyClass;
import gambrel.trade.shop.Batch;
import gambrel.trade.shop.BenchEntry;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Step;
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
                row.get("unit", CellTypes::unit).orElse(shopUnit),
                row.need("division", CellTypes::positive),
                row.kindly("capacity", CellTypes::positive),
                row.kindly("class", FloorTables::accuracy)));
  }

  private static AccuracyClass accuracy(CellTypes formats, String text) {
    return AccuracyClass.of(text).orElseThrow(() -> new BadCell("NOT_CLASS"));
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

  private static ScaleCode code(String pattern, ShopRow row, Known known) {
    int star = pattern.indexOf('*');
    if (star >= 0 && star < pattern.length() - 1) {
      throw row.refuse("code", new BadCell("EARLY_STAR"));
    }
    var step = row.need("step", CellTypes.word(Step.class));
    boolean needsItem = step.movesMass() && step != Step.ADDED;
    return new ScaleCode(
        pattern,
        needsItem ? known.neededItem(row, "item") : known.optionalItem(row, "item"),
        step,
        row.text("description"),
        row.get("tare", CellTypes::weight).orElse(Weight.ZERO),
        row.get("tare_each", CellTypes::yesNo).orElse(false),
        row.get("nominal", CellTypes::weight));
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
          var from = row.need("from", CellTypes::moment);
          var to = row.need("to", CellTypes::lastMoment);
          if (to.isBefore(from)) {
            throw row.refuse(NoticeCode.SHOP_ROW_BAD, "TO_BEFORE_FROM");
          }
          String body = row.text("body");
          return new BenchEntry(
              scale,
              from,
              to,
              known.isTag(body) ? body : row.knownOrKept("body", known.bodies()),
              row.get("batch", CellTypes::id).orElse(""),
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
                row.kindly("made", CellTypes::date),
                row.kindly("gain", CellTypes::yesNo).orElse(false),
                row.kindly("due", CellTypes::date),
                row.text("added"),
                row.text("note"),
                true));
  }
}
