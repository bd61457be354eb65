package gambrel.files.folder;

import gambrel.trade.cuts.Species;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Outcome;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** Reads {@code bodies.csv}. */
final class BodiesReader {
  private static final Columns COLUMNS =
      Columns.of("bodies.csv", "body", "species")
          .and("class", "killed", "live_weight", "live_guessed", "age_months", "fat_mm")
          .and("customer", "head", "tags", "mark", "outcome", "supplier", "cost", "note");

  private BodiesReader() {}

  /**
   * The bodies by id, without what {@code shares.csv} says. A body of unknown species is left out;
   * any other bad cell is read as blank.
   *
   * @param customers every owner that may be named, the shop included
   */
  static SortedMap<String, Body> read(ShopFolder folder, IdIndex customers) {
    return folder.byIdVital(
        COLUMNS,
        (id, row) -> {
          row.about(id);
          return body(id, row, customers);
        });
  }

  private static Body body(String id, ShopRow row, IdIndex customers) {
    return new Body(
        id,
        row.need("species", CellTypes.word(Species.class)),
        row.text("class"),
        row.kindly("killed", CellTypes::date),
        row.kindly("live_weight", CellTypes::weight),
        row.kindly("live_guessed", CellTypes::yesNo).orElse(false),
        row.kindly("age_months", CellTypes::count),
        row.text("fat_mm"),
        row.knownOrKept("customer", customers),
        Map.of(),
        row.kindly("head", CellTypes::head).orElse(1),
        row.kindly("tags", CellTypes::ids).orElse(List.of()),
        row.text("mark"),
        row.kindly("outcome", CellTypes.word(Outcome.class)).orElse(Outcome.CUT),
        row.text("supplier"),
        row.kindly("cost", CellTypes::money),
        row.text("note"));
  }
}
