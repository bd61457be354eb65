package gambrel.files.export;

import gambrel.files.csv.CsvRow;
import gambrel.files.layout.Layout;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes rows of the records of one export file. */
final class ExportRows {
  /** The fields that a broken row keeps, to say whose it is. */
  private static final Set<Field> IDENTITY =
      EnumSet.of(Field.SCALE, Field.TICKET, Field.TIME, Field.BODY);

  /** The fields whose texts hardly ever come again in a file. */
  private static final Set<Field> UNIQUE = EnumSet.of(Field.TICKET, Field.TIME, Field.GROSS);

  /** The most characters of a cell in a column that is read. */
  private static final int LONGEST = 500;

  private final String path;
  private final Layout layout;
  private final int width;
  private final int fewest;
  private final Map<String, Integer> positions;

  /** One object for equal texts: scales, codes and bodies come up in thousands of rows. */
  private final Map<String, String> shared = new HashMap<>();

  /**
   * Rows of one file.
   *
   * @param path relative to the shop folder
   * @param width number of its columns
   * @param positions the index of each column
   */
  ExportRows(String path, Layout layout, int width, Map<String, Integer> positions) {
    this.path = path;
    this.layout = layout;
    this.width = width;
    this.positions = positions;
    this.fewest = layout.fewest(positions);
  }

  /** The row of a record in a file whose columns are known. */
  ExportRow row(CsvRow csv) {
    return row(csv, csv.broken().or(() -> miscounted(csv)).or(() -> overlong(csv)));
  }

  /** The row of a record that is broken for the reason {@code broken}, if any. */
  ExportRow row(CsvRow csv, Optional<Phrase> broken) {
    var cells = new HashMap<String, String>();
    positions.forEach(
        (column, position) -> {
          String text = csv.cell(position);
          if (!text.isEmpty() && text.length() <= LONGEST) {
            cells.put(column, text);
          }
        });
    var read = layout.translation().apply(cells);
    var fault = broken.or(read::broken);
    var fields = new EnumMap<Field, String>(Field.class);
    read.texts()
        .forEach(
            (field, text) -> {
              if (fault.isEmpty() || IDENTITY.contains(field)) {
                fields.put(
                    field,
                    UNIQUE.contains(field) ? text : shared.computeIfAbsent(text, same -> same));
              }
            });
    var place = new Place(path, csv.line());
    var row = new ExportRow(place, fields, layout.unit(), read.identity(), fault, csv.raw());
    if (read.unreadable().isEmpty()) {
      return row;
    }
    var unreadable = new HashMap<>(read.unreadable());
    unreadable.keySet().retainAll(fields.keySet());
    return row.unreadable(unreadable);
  }

  private Optional<Phrase> miscounted(CsvRow csv) {
    int cells = csv.cells().size();
    if (!csv.isBlankFrom(width)) {
      return Optional.of(
          cells(layout.text().header() ? "FAULT.UNLIKE_HEADER" : "FAULT.UNLIKE_ROWS", cells));
    }
    return cells < fewest ? Optional.of(cells("FAULT.ENDS_EARLY", cells)) : Optional.empty();
  }

  private Phrase cells(String fault, int cells) {
    return Phrase.of(fault).with("found", cells).with("expected", width);
  }

  private Optional<Phrase> overlong(CsvRow csv) {
    return positions.entrySet().stream()
        .filter(column -> csv.cell(column.getValue()).length() > LONGEST)
        .map(Map.Entry::getKey)
        .sorted()
        .findFirst()
        .map(column -> Phrase.of("FAULT.LONG_CELL").with("column", column).with("most", LONGEST));
  }
}
