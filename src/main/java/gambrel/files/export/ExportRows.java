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

/** Turns the records of one export file into rows. */
final class ExportRows {
  /** What a broken row may still tell: whose it is. */
  private static final Set<Field> IDENTITY =
      Set.of(Field.SCALE, Field.TICKET, Field.TIME, Field.BODY);

  /** What hardly two rows of a file have in common. */
  private static final Set<Field> OWN = EnumSet.of(Field.TICKET, Field.TIME, Field.GROSS);

  /** The most characters that a cell with a meaning may have. */
  private static final int LONGEST = 500;

  private final String path;
  private final Layout layout;
  private final int width;
  private final int fewest;
  private final Map<String, Integer> positions;

  private final Map<String, String> texts = new HashMap<>();

  /**
   * Prepares for a file.
   *
   * @param path relative to the shop folder
   * @param width number of its columns
   * @param positions where the columns stand
   */
  ExportRows(String path, Layout layout, int width, Map<String, Integer> positions) {
    this.path = path;
    this.layout = layout;
    this.width = width;
    this.positions = positions;
    this.fewest = layout.fewest(positions);
  }

  /** A row of a file whose columns are known. */
  ExportRow row(CsvRow csv) {
    if (csv.broken().isPresent()) {
      return row(csv, csv.broken());
    }
    var miscounted = miscounted(csv);
    return row(csv, miscounted.isPresent() ? miscounted : overlong(csv));
  }

  /** A row that cannot be used for a reason of its own or the file's. */
  ExportRow row(CsvRow csv, Optional<Phrase> broken) {
    var place = new Place(path, csv.line());
    var read = layout.translation().translate(cells(csv));
    var fault = broken.or(read::broken);
    var fields = fields(read.fields(), fault.isPresent());
    var unreadable = new HashMap<>(read.unreadable());
    unreadable.keySet().retainAll(fields.keySet());
    return new ExportRow(place, fields, layout.unit(), read.identity(), fault, csv.raw())
        .unreadable(unreadable);
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

  private Map<String, String> cells(CsvRow csv) {
    var cells = new HashMap<String, String>();
    positions.forEach(
        (column, position) -> {
          String text = csv.cell(position);
          if (!text.isEmpty() && text.length() <= LONGEST) {
            cells.put(column, text);
          }
        });
    return cells;
  }

  private Map<Field, String> fields(Map<Field, String> read, boolean broken) {
    var fields = new EnumMap<Field, String>(Field.class);
    read.forEach(
        (field, text) -> {
          if (!broken || IDENTITY.contains(field)) {
            fields.put(field, OWN.contains(field) ? text : shared(text));
          }
        });
    return fields;
  }

  /** One object for equal texts: scales, codes and bodies come up in thousands of rows. */
  private String shared(String text) {
    var known = texts.putIfAbsent(text, text);
    return known == null ? text : known;
  }
}
