package gambrel.files.folder;

import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.UnreadRow;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** Reads what the rows name that cannot be read. */
final class UnreadReader {
  private static final Set<String> OF_BODIES = Set.of("bodies.csv", "shares.csv");

  private final Known known;

  private UnreadReader(Known known) {
    this.known = known;
  }

  /** The rows of a folder that cannot be read, in order; its tables were read. */
  static List<UnreadRow> read(ShopFolder folder, Known known) {
    var reader = new UnreadReader(known);
    return folder.unread().stream()
        .map(reader::row)
        .sorted(Comparator.comparing(UnreadRow::place))
        .toList();
  }

  private UnreadRow row(ShopRow row) {
    var fault = row.fault().orElseThrow();
    var from =
        Stream.of("on", "date")
            .flatMap(column -> row.legible(column, CellTypes::moment).stream())
            .max(Comparator.naturalOrder());
    var names = new HashMap<String, String>();
    if (!row.isOverfull()) {
      kinds(row.place().file())
          .forEach((column, kind) -> names.put(column, row.legible(column, kind).orElse("")));
      names.values().removeIf(String::isEmpty);
    }
    boolean ofBody = OF_BODIES.contains(row.place().file());
    if (ofBody && names.containsKey("body")) {
      // What else a row of bodies or shares says of its body may be what cannot be read.
      names.keySet().retainAll(List.of("body"));
    }
    return new UnreadRow(row.place(), text(fault, "column"), text(fault, "cell"), from, names);
  }

  /** How a row of a file names things, by column. */
  private Map<String, BiFunction<CellTypes, String, String>> kinds(String file) {
    return switch (file) {
      case "codes.csv" -> Map.of("code", CellTypes::id);
      case "cuts.csv" -> Map.of("item", CellTypes::item, "species", UnreadReader::species);
      case "bodies.csv" ->
          Map.of(
              "body", CellTypes::id,
              "customer", (types, id) -> find(known.customers(), id),
              "species", UnreadReader::species);
      case "corrections.csv" ->
          Map.of(
              "ticket", OfficeTables::ticket,
              "scale", (types, id) -> known.scales().find(id).map(IdIndex.Match::id).orElse(id),
              "date", (types, date) -> types.date(date).toString(),
              "field", (types, field) -> OfficeTables.field(types, field).id(),
              "value", CellTypes::id);
      default ->
          Map.of(
              "body", (types, id) -> find(known.bodies(), id),
              "customer", (types, id) -> find(known.customers(), id),
              "species", UnreadReader::species,
              "item", (types, item) -> known.isItem(types.item(item)) ? types.item(item) : "");
    };
  }

  private static String species(CellTypes types, String text) {
    return CellTypes.word(Species.class, text).id();
  }

  /** The id that is meant; empty if there is none. */
  private static String find(IdIndex index, String id) {
    return index.find(id).map(IdIndex.Match::id).orElse("");
  }

  private static String text(Notice notice, String name) {
    return notice.saying().values().get(name) instanceof Value.Text text ? text.text() : "";
  }
}
