package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.folder.ShopFolder.Table;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.AccuracyClass;
import gambrel.trade.shop.Batch;
import gambrel.trade.shop.BenchEntry;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Scale;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the tables of bodies and their shares, scales, the bench and batches. */
final class FloorTables {
  /** {@code 1/2} or {@code 1 of 2}. */
  private static final Pattern RATIO =
      Pattern.compile("(?i)(\\d{1,12})\\s*(?:/|\\sof\\s)\\s*(\\d{1,12})");

  private FloorTables() {}

  /**
   * The bodies of {@code bodies.csv} by id, with the owner in their own row only. A body without a
   * legible species is left out; any other cell that cannot be read is taken as blank.
   *
   * @param customers every owner that may be named, the shop included
   */
  static Map<String, Body> bodies(ShopFolder folder, IdIndex customers) {
    return folder.byId(
        Table.of(
            "bodies.csv",
            "body species",
            "class killed live_weight live_guessed age_months fat_mm"
                + " customer head tags mark outcome chiller cut_by supplier cost note"),
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
        row.get("fat_mm", CellTypes::notNegative).map(number -> row.text("fat_mm")).orElse(""),
        row.knownOrKept("customer", customers),
        Map.of(),
        row.getOrBlank("head", CellTypes::head).orElse(1),
        row.getOrBlank("tags", CellTypes::ids).orElse(List.of()),
        row.text("mark"),
        row.getOrBlank("outcome", CellTypes.word(Outcome.class)).orElse(Outcome.CUT),
        row.text("chiller"),
        row.getOrBlank("cut_by", CellTypes::date),
        row.text("supplier"),
        row.getOrBlank("cost", CellTypes::money),
        row.text("note"));
  }

  /** The bodies with their shares in {@code shares.csv}; several rows of one customer add up. */
  static SortedMap<String, Body> shares(
      ShopFolder folder, Map<String, Body> bodies, IdIndex customers) {
    var ids = new IdIndex(bodies.keySet());
    var shares = new TreeMap<String, Map<String, BigFraction>>();
    folder.each(
        Table.of("shares.csv", "body customer share", ""),
        row -> {
          String body = row.needKnown("body", ids);
          row.setBody(body);
          row.needText("customer");
          var share = row.need("share", FloorTables::share);
          shares
              .computeIfAbsent(body, id -> new TreeMap<>())
              .merge(row.knownOrKept("customer", customers), share, BigFraction::add);
        });
    var owned = new TreeMap<>(bodies);
    owned.replaceAll((id, body) -> body.withShares(shares.getOrDefault(id, Map.of())));
    return owned;
  }

  /** A share above zero: {@code 1/2}, {@code 0.25}, {@code 50%}, {@code 1 of 2}. */
  static BigFraction share(CellTypes types, String text) {
    var ratio = RATIO.matcher(text);
    var share =
        ratio.matches()
            ? BadCell.unless(
                "NOT_SHARE", () -> BigFraction.parse(ratio.group(1) + '/' + ratio.group(2)))
            : decimalShare(types, text);
    return BadCell.unless("NOT_SHARE", share, positive -> positive.signum() > 0);
  }

  private static BigFraction decimalShare(CellTypes types, String text) {
    boolean percent = text.endsWith("%");
    String number = percent ? text.substring(0, text.length() - 1).strip() : text;
    CellTypes.notDate(number, "LOST_SHARE");
    try {
      var share = Exact.fraction(types.number(number));
      return percent ? share.divide(Exact.HUNDRED) : share;
    } catch (BadCell e) {
      throw new BadCell("NOT_SHARE");
    }
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

  /** The batches of {@code batches.csv} by id. A cell that cannot be read is taken as blank. */
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
