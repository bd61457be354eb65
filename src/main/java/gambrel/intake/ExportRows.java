package gambrel.intake;

import gambrel.notice.Place;
import gambrel.weighing.ExportRow;
import gambrel.weighing.Field;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns the records of one export file into rows. */
final class ExportRows {
  /** What a broken row may still tell: whose it is. */
  private static final Set<Field> IDENTITY =
      Set.of(Field.SCALE, Field.TICKET, Field.TIME, Field.BODY);

  private final String path;
  private final Layout layout;
  private final int width;
  private final int fewest;
  private final Map<Field, Integer> positions;
  private final Map<String, String> texts = new HashMap<>();

  /**
   * Prepares for a file.
   *
   * @param path relative to the shop folder
   * @param width number of its columns
   * @param positions where the fields stand
   */
  ExportRows(String path, Layout layout, int width, Map<Field, Integer> positions) {
    this.path = path;
    this.layout = layout;
    this.width = width;
    this.positions = positions;
    this.fewest =
        layout.required().stream().mapToInt(f -> positions.getOrDefault(f, -1)).max().orElse(-1)
            + 1;
  }

  /** The fewest cells that a row may have: only optional columns may be missing at its end. */
  int fewest() {
    return Math.max(1, fewest);
  }

  /** A row of a file whose columns are known. */
  ExportRow row(CsvRow csv) {
    return row(csv, csv.broken().or(() -> miscounted(csv.cells().size())));
  }

  /** A row that cannot be used for a reason of its own or the file's. */
  ExportRow row(CsvRow csv, Optional<String> broken) {
    return new ExportRow(
        new Place(path, csv.line()),
        cells(csv, broken.isPresent()),
        layout.unit(),
        broken,
        csv.raw());
  }

  private Optional<String> miscounted(int cells) {
    if (cells > width) {
      return Optional.of("it has " + cells + " cells where the first line has " + width);
    }
    return cells < fewest
        ? Optional.of("it ends after " + cells + " of " + width + " cells")
        : Optional.empty();
  }

  private Map<Field, String> cells(CsvRow csv, boolean broken) {
    var cells = new EnumMap<Field, String>(Field.class);
    positions.forEach(
        (field, position) -> {
          String text = csv.cell(position);
          if (!text.isEmpty() && (!broken || IDENTITY.contains(field))) {
            cells.put(field, shared(text));
          }
        });
    return Collections.unmodifiableMap(cells);
  }

  /** One object for equal texts: scales, codes and bodies come up in thousands of rows. */
  private String shared(String text) {
    return texts.merge(text, text, (known, same) -> known);
  }

  /** The rows of a file. */
  List<ExportRow> rows(List<CsvRow> records) {
    return records.stream().map(this::row).toList();
  }
}
