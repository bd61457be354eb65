package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.folder.ShopFolder.Table;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.AccuracyClass;
import gambrel.trade.shop.Batch;
import gambrel.trade.shop.BenchEntry;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Step;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** Reads the tables of bodies, scales, codes, the bench and batches. */
final class FloorTables {
  private FloorTables() {}

  /**
   * The bodies of {@code bodies.csv} by id, with the owner in their own row only. A body without a
   * legible species is left out; any other cell that cannot be read is taken as blank.
   *
   * @param customers every owner that may be named, the shop included
   */
  static SortedMap<String, Body> bodies(ShopFolder folder, IdIndex customers) {
    return folder.byId(
        Table.of(
            "bodies.csv",
            "body species",
            "class killed live_weight live_guessed age_months fat_mm"
                + " customer head tags mark outcome supplier cost note"),
        (id, row) -> {
          row.setBody(id);
          return body(id, row, customers);
        });
  }

  private static Body body(String id, ShopRow row, IdIndex customers) {
    return new Body(
        id,
        row.need("species", CellTypes.word(Species.class)),
        row.text("class"),
        row.getOrBlank("killed", CellTypes::date),
        row.getOrBlank("live_weight", CellTypes::weight),
        row.getOrBlank("live_guessed", CellTypes::yesNo).orElse(false),
        row.getOrBlank("age_months", CellTypes::count),
        row.text("fat_mm"),
        row.knownOrKept("customer", customers),
        Map.of(),
        row.getOrBlank("head", CellTypes::head).orElse(1),
        row.getOrBlank("tags", CellTypes::ids).orElse(List.of()),
        row.text("mark"),
        row.getOrBlank("outcome", CellTypes.word(Outcome.class)).orElse(Outcome.CUT),
        row.text("supplier"),
        row.getOrBlank("cost", CellTypes::money),
        row.text("note"));
  }

  /** The scales by id; one without a division or with an unknown unit is left out. */
  static Map<String, Scale> scales(ShopFolder folder, WeightUnit shopUnit) {
    return folder.byId(
        Table.of("scales.csv", "scale division", "where layout unit capacity class"),
        (id, row) ->
            new Scale(
                id,
                row.text("where"),
                row.text("layout"),
                row.get("unit", CellTypes::unit).orElse(shopUnit),
                row.need("division", CellTypes::positive),
                row.getOrBlank("capacity", CellTypes::positive),
                row.getOrBlank("class", FloorTables::accuracy)));
  }

  private static AccuracyClass accuracy(CellTypes types, String text) {
    return AccuracyClass.of(text).orElseThrow(() -> new BadCell("NOT_CLASS"));
  }

  /** The codes of {@code codes.csv} in file order. */
  static List<ScaleCode> codes(ShopFolder folder, Known known) {
    var taken = new HashSet<String>();
    return folder.list(
        Table.of("codes.csv", "code item step", "description tare tare_each nominal"),
        row -> {
          var code = code(row.newId("code", taken), row, folder, known);
          taken.add(code.pattern());
          return code;
        });
  }

  private static ScaleCode code(String pattern, ShopRow row, ShopFolder folder, Known known) {
    row.need("code", FloorTables::pattern);
    var step = row.need("step", CellTypes.word(Step.class));
    if (step.movesMass() && step != Step.ADDED) {
      row.needText("item");
    }
    return new ScaleCode(
        pattern,
        isUnread(row, folder) ? row.need("item", CellTypes::item) : known.item(row),
        step,
        row.text("description"),
        row.get("tare", CellTypes::weight).orElse(Weight.ZERO),
        row.get("tare_each", CellTypes::yesNo).orElse(false),
        row.get("nominal", CellTypes::weight));
  }

  /** A code; only the last character may stand for more of them. */
  private static String pattern(CellTypes types, String text) {
    int star = text.indexOf('*');
    if (star >= 0 && star < text.length() - 1) {
      throw new BadCell("EARLY_STAR");
    }
    return text;
  }

  /** Whether the row of an item in cuts.csv cannot be read; the item is known even so. */
  private static boolean isUnread(ShopRow code, ShopFolder folder) {
    var item = code.legible("item", CellTypes::item);
    return item.isPresent()
        && folder.unread().stream()
            .filter(row -> row.place().file().equals("cuts.csv"))
            .anyMatch(row -> row.legible("item", CellTypes::item).equals(item));
  }

  /**
   * The entries of {@code bench.csv} in file order. An unknown body or customer is kept as it
   * stands: the rows that it fills must not count as rows without an owner.
   */
  static List<BenchEntry> bench(ShopFolder folder, Known known) {
    return folder.list(
        Table.of("bench.csv", "scale from to", "body batch customer boner"),
        row -> {
          String scale = row.needKnown("scale", known.scales());
          var from = row.need("from", CellTypes::moment);
          var to = row.need("to", CellTypes::lastMoment);
          row.checkPeriod(Optional.of(from), Optional.of(to));
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

  /** The batches of {@code batches.csv} by id. */
  static Map<String, Batch> batches(ShopFolder folder) {
    return folder.byId(
        Table.of("batches.csv", "batch", "product made gain due added note"),
        (id, row) ->
            new Batch(
                id,
                row.text("product"),
                row.getOrBlank("made", CellTypes::date),
                row.getOrBlank("gain", CellTypes::yesNo).orElse(false),
                row.getOrBlank("due", CellTypes::date),
                row.text("added"),
                row.text("note"),
                true));
  }
}
