package gambrel.intake;

import gambrel.cuts.Species;
import gambrel.shop.Body;
import gambrel.shop.IdIndex;
import gambrel.shop.Outcome;
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

  private static Body body(String id, Row row, IdIndex customers) {
    return new Body(
        id,
        row.need("species", Formats.word(Species.class)),
        row.text("class"),
        row.kindly("killed", Formats::date),
        row.kindly("live_weight", Formats::weight),
        row.kindly("live_guessed", Formats::yesNo).orElse(false),
        row.kindly("age_months", Formats::count),
        row.text("fat_mm"),
        row.knownOrKept("customer", customers),
        Map.of(),
        row.kindly("head", Formats::head).orElse(1),
        row.kindly("tags", Formats::ids).orElse(List.of()),
        row.text("mark"),
        row.kindly("outcome", Formats.word(Outcome.class)).orElse(Outcome.CUT),
        row.text("supplier"),
        row.kindly("cost", Formats::money),
        row.text("note"));
  }
}
