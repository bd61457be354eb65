package gambrel.files.export;

import gambrel.files.csv.CsvRow;
import gambrel.files.layout.Layout;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes rows of the records of one export file. */
final class ExportRows {
  private static final Field[] FIELDS = Field.values();
  private static final Set<Field> EVERY = EnumSet.allOf(Field.class);

  /** The fields that a broken row keeps, to say whose it is. */
  private static final Set<Field> IDENTITY =
      EnumSet.of(Field.SCALE, Field.TICKET, Field.TIME, Field.BODY, Field.BATCH);

  /** The fields whose texts hardly ever come again in a file. */
  private static final Set<Field> UNIQUE = EnumSet.of(Field.TICKET, Field.TIME);

  /** The most characters of a cell in a column that is read; a record keeps as much of its text. */
  private static final int LONGEST = 500;

  private final String path;
  private final Layout layout;
  private final int width;
  private final int fewest;
  private final Map<String, Integer> positions;

  private final CountedLines lines;

  /** The date in the file's name, if the layout takes it. */
  private final Optional<String> dateInName;

  /** One object for equal texts: scales, codes and bodies come up in thousands of rows. */
  private final Map<String, String> shared = new HashMap<>();

  /**
   * Rows of one file.
   *
   * @param path relative to the shop folder
   * @param width number of its columns
   * @param positions the index of each column
   * @param lines its lines, of which some give values to the rows below them
   */
  ExportRows(
      String path, Layout layout, int width, Map<String, Integer> positions, CountedLines lines) {
    this.path = path;
    this.layout = layout;
    this.width = width;
    this.positions = positions;
    this.fewest = layout.fewest(positions);
    this.lines = lines;
    this.dateInName = layout.dateInName().apply(path);
  }

  /** The row of a record in a file whose columns are known. */
  ExportRow row(CsvRow csv) {
    var broken = csv.broken().or(() -> miscounted(csv)).or(() -> overlong(csv));
    var translated = layout.translation().apply(cells(csv));
    var fault = broken.or(translated::broken);
    var kept = fault.isPresent() ? IDENTITY : EVERY;
    var values = new String[FIELDS.length];
    for (var field : FIELDS) {
      String text = kept.contains(field) ? translated.text(field) : "";
      boolean alone = text.isEmpty() || UNIQUE.contains(field);
      values[field.ordinal()] = alone ? text : shared.computeIfAbsent(text, same -> same);
    }
    translated.unreadable().keySet().retainAll(kept);
    return new ExportRow(
        new Place(path, csv.line()),
        List.of(values),
        layout.unit(),
        translated.identity(),
        fault,
        csv.raw(),
        translated.labels(),
        Map.copyOf(translated.unreadable()));
  }

  private Map<String, String> cells(CsvRow csv) {
    var cells = new HashMap<String, String>();
    positions.forEach((column, position) -> cells.put(column, cell(csv, position)));
    cells.values().removeIf(String::isEmpty);
    lines.above(csv.line()).forEach(cells::putIfAbsent);
    dateInName.ifPresent(date -> cells.putIfAbsent("date", date));
    return cells;
  }

  /** The text of a cell; empty if it is too long. */
  private static String cell(CsvRow csv, int position) {
    String text = csv.cell(position);
    return text.length() <= LONGEST ? text : "";
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
    if (csv.raw().length() < LONGEST) {
      return Optional.empty();
    }
    return positions.entrySet().stream()
        .filter(column -> csv.cell(column.getValue()).length() > LONGEST)
        .map(Map.Entry::getKey)
        .sorted()
        .findFirst()
        .map(column -> Phrase.of("FAULT.LONG_CELL").with("column", column).with("most", LONGEST));
  }
}
