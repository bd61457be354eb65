package gambrel.damage;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether a row is one that somebody may have meant. Written from the contract; shares no code with
 * the program.
 */
final class WellFormed {
  private static final Set<String> WITHOUT_ITEM = Set.of("added", "test", "other");
  private static final Set<String> OF_A_BODY = Set.of("hot", "cold", "aged", "block", "bin");
  private static final Set<String> OF_A_BODY_OR_BATCH = Set.of("pack", "tub");

  private final Map<String, TypedTable> shop;
  private final Set<String> items = new HashSet<>();
  private final Map<String, String> steps;

  /** For slips in one shop. */
  WellFormed(Map<String, TypedTable> shop) {
    this.shop = shop;
    for (var species : List.of("beef", "veal", "lamb", "pork", "goat", "game")) {
      items.addAll(column(builtIn(species), "item"));
    }
    items.addAll(column(shop.get("cuts.csv"), "item"));
    var codes = shop.get("codes.csv");
    steps = codes.rows().stream().collect(Collectors.toMap(row -> row.get(0), row -> row.get(2)));
  }

  private static TypedTable builtIn(String species) {
    try (InputStream in =
        WellFormed.class.getResourceAsStream("/gambrel/cuts/" + species + ".csv")) {
      return TypedTable.read(species, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> column(TypedTable table, String column) {
    int at = table.header().indexOf(column);
    return table.rows().stream().map(row -> row.get(at)).collect(Collectors.toSet());
  }

  private boolean known(CellKind kind, String id) {
    return switch (kind) {
      case CUSTOMER ->
          id.equals("shop") || column(shop.get("customers.csv"), "customer").contains(id);
      case BODY ->
          column(shop.get("bodies.csv"), "body").contains(id)
              || column(shop.get("bodies.csv"), "tags").contains(id);
      case SCALE -> column(shop.get("scales.csv"), "scale").contains(id);
      case CODE -> steps.containsKey(id);
      default -> true;
    };
  }

  /** Whether every cell of a row is a value of its kind and the row can be used. */
  boolean row(String file, Mistake.ChangedRow row) {
    var cells = row.after();
    var columns = ShopColumns.of(file);
    boolean filled =
        columns.filled().stream().allMatch(cells::containsKey)
            && (!file.equals("codes.csv")
                || cells.containsKey("item")
                || WITHOUT_ITEM.contains(cells.get("step")));
    boolean ofKind =
        cells.entrySet().stream()
            .allMatch(cell -> cell(columns.kinds().get(cell.getKey()), cell.getValue(), cells));
    return !row.tooLong()
        && filled
        && ofKind
        && inOrder(cells)
        && (!file.startsWith("exports/") || usable(cells));
  }

  private boolean cell(CellKind kind, String cell, Map<String, String> row) {
    if (kind == CellKind.CORRECTED) {
      var field = ShopColumns.of("exports").kinds().get(row.getOrDefault("field", ""));
      return field == null || field.holds(cell) && (field == CellKind.BODY || known(field, cell));
    }
    return kind.holds(cell) && (kind != CellKind.ITEM || items.contains(cell));
  }

  private static boolean inOrder(Map<String, String> cells) {
    var from = cells.get("from");
    var to = cells.get("to");
    return from == null || to == null || from.compareTo(to) <= 0;
  }

  /** Whether an export's row is used, and not set aside, whatever body it names. */
  private boolean usable(Map<String, String> cells) {
    var step = steps.getOrDefault(cells.get("code"), "");
    boolean owned =
        cells.containsKey("body")
            || onBench(cells)
            || !OF_A_BODY.contains(step)
                && (!OF_A_BODY_OR_BATCH.contains(step) || cells.containsKey("batch"));
    return owned
        && (cells.containsKey("net") || cells.containsKey("gross"))
        && (step.equals("test") || !zero(cells))
        && List.of("scale", "customer", "code").stream()
            .allMatch(
                c ->
                    !cells.containsKey(c)
                        || known(ShopColumns.of("exports").kinds().get(c), cells.get(c)));
  }

  private static boolean zero(Map<String, String> cells) {
    return Double.parseDouble(cells.getOrDefault("net", "1")) == 0;
  }

  private boolean onBench(Map<String, String> cells) {
    var bench = shop.get("bench.csv");
    return bench.rows().stream()
        .anyMatch(
            row ->
                row.get(0).equals(cells.get("scale"))
                    && !row.get(3).isEmpty()
                    && row.get(1).compareTo(cells.getOrDefault("time", "")) <= 0
                    && row.get(2).compareTo(cells.getOrDefault("time", "")) >= 0);
  }

  /** Whether no cell of an export's row says whose it is. */
  boolean namesNobody(Mistake.ChangedRow row) {
    return row.after().values().stream().noneMatch(this::isBody)
        && !isBatch(row.after().get("batch"))
        && !onBench(row.after());
  }

  /** Whether a text is the id or a tag of a body. */
  boolean isBody(String text) {
    return !text.isEmpty() && known(CellKind.BODY, text);
  }

  private boolean isBatch(String id) {
    return column(shop.get("batches.csv"), "batch").contains(id);
  }

  /** Whether a row names a body, customer or scale that there is not, which draws a notice. */
  boolean namesUnknown(String file, Mistake.ChangedRow row) {
    return row.after().entrySet().stream()
        .anyMatch(
            cell -> {
              var kind = ShopColumns.of(file).kinds().get(cell.getKey());
              return !cell.getValue().equals(row.before().get(cell.getKey()))
                  && !known(kind, cell.getValue());
            });
  }
}
