package gambrel.files.folder;

import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Unread;
import gambrel.trade.shop.Unread.UnreadItem;
import gambrel.trade.shop.UnreadRow;
import gambrel.trade.shop.UnreadRow.NamedRows;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads what the rows name that cannot be read. */
final class UnreadReader {
  private final ShopFolder folder;
  private final Known known;
  private final Collection<Body> bodies;

  private UnreadReader(ShopFolder folder, Known known, Collection<Body> bodies) {
    this.folder = folder;
    this.known = known;
    this.bodies = bodies;
  }

  /** The items of {@code cuts.csv} whose rows cannot be read. */
  static List<UnreadItem> items(ShopFolder folder) {
    return rows(folder, "cuts.csv").flatMap(row -> item(row).stream()).toList();
  }

  private static Optional<UnreadItem> item(ShopRow row) {
    var species = row.legible("species", CellTypes.word(Species.class));
    return row.legible("item", CellTypes::item)
        .map(item -> new UnreadItem(species, item, row.place()));
  }

  private static Stream<ShopRow> rows(ShopFolder folder, String file) {
    return folder.unread().stream().filter(row -> row.place().file().equals(file));
  }

  /** All that cannot be read of a folder whose tables were read. */
  static Unread read(ShopFolder folder, Known known, Collection<Body> bodies) {
    var reader = new UnreadReader(folder, known, bodies);
    return new Unread(reader.rows(), codes(folder), known.unreadItems());
  }

  private static Map<String, Place> codes(ShopFolder folder) {
    var codes = new HashMap<String, Place>();
    rows(folder, "codes.csv")
        .forEach(
            row ->
                row.legible("code", CellTypes::id)
                    .ifPresent(code -> codes.putIfAbsent(code, row.place())));
    return codes;
  }

  private List<UnreadRow> rows() {
    return folder.unread().stream()
        .filter(ShopRow::holdsStatements)
        .map(this::row)
        .sorted(Comparator.comparing(UnreadRow::place))
        .toList();
  }

  private UnreadRow row(ShopRow row) {
    var fault = row.fault().orElseThrow();
    var from =
        Stream.of("on", "date")
            .flatMap(column -> row.legible(column, CellTypes::moment).stream())
            .max(Comparator.naturalOrder());
    String file = row.place().file();
    boolean ofMoney = file.equals("charges.csv") || file.equals("payments.csv");
    boolean all = row.isOverfull();
    var body = all ? Optional.<String>empty() : body(row);
    // What else a row of bodies or shares says of its body may be what cannot be read.
    boolean only = body.isPresent() && !ofMoney;
    return new UnreadRow(
        row.place(),
        text(fault, "column"),
        text(fault, "cell"),
        ofMoney,
        from,
        body,
        all || only ? Optional.empty() : customer(row),
        all || only ? Optional.empty() : row.legible("species", CellTypes.word(Species.class)),
        all ? Optional.empty() : row.legible("item", CellTypes::item).filter(known::isItem),
        all ? Optional.empty() : namedRows(row));
  }

  private static String text(Notice notice, String name) {
    return notice.saying().values().get(name) instanceof Value.Text text ? text.text() : "";
  }

  /** The body that the row names or defines; one that it defines may be left out. */
  private Optional<String> body(ShopRow row) {
    var id = row.legible("body", CellTypes::id);
    return row.place().file().equals("bodies.csv") ? id : find(known.bodies(), id);
  }

  private Optional<String> customer(ShopRow row) {
    return find(known.customers(), row.legible("customer", CellTypes::id));
  }

  private static Optional<String> find(IdIndex index, Optional<String> id) {
    return id.flatMap(index::find).map(IdIndex.Match::id);
  }

  private Optional<NamedRows> namedRows(ShopRow row) {
    var scale = row.legible("scale", CellTypes::id);
    var field = row.legible("field", OfficeTables::field);
    boolean givesBody = field.isEmpty() || field.get() == Field.BODY;
    return row.legible("ticket", OfficeTables::ticket)
        .map(
            ticket ->
                new NamedRows(
                    scale.map(id -> find(known.scales(), scale).orElse(id)),
                    ticket,
                    row.legible("date", CellTypes::date),
                    givesBody ? meant(row.text("value")) : Set.of()));
  }

  /** The bodies whose id or tag a text is. */
  private Set<String> meant(String text) {
    var id = known.bodies().find(text).map(IdIndex.Match::id);
    return bodies.stream()
        .filter(b -> id.isPresent() ? b.id().equals(id.get()) : b.tags().contains(text))
        .map(Body::id)
        .collect(Collectors.toSet());
  }
}
