package gambrel.intake;

import gambrel.notice.Phrase;
import gambrel.notice.Place;
import gambrel.weighing.ExportRow;
import gambrel.weighing.Field;
import java.util.EnumMap;
import java.util.EnumSet;
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

  /** What hardly two rows of a file have in common. */
  private static final Set<Field> OWN = EnumSet.of(Field.TICKET, Field.TIME, Field.GROSS);

  /** The most characters that a cell with a meaning may have. */
  private static final int LONGEST = 500;

  private final String path;
  private final Layout layout;
  private final int width;
  private final int fewest;
  private final Map<String, Integer> positions;

  /** Where fields stand in an export that needs no translation; empty for any other. */
  private final Map<Field, Integer> untranslated = new EnumMap<>(Field.class);

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
    if (layout.translation() == RowTranslation.PLAIN) {
      positions.forEach((column, at) -> untranslated.put(Field.of(column).orElseThrow(), at));
    }
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
    if (!untranslated.isEmpty()) {
      var fields = untranslated(csv, broken.isPresent());
      return new ExportRow(place, fields, layout.unit(), broken, csv.raw());
    }
    var read = layout.translation().translate(cells(csv));
    var fault = broken.or(read::broken);
    var fields = fields(read.fields(), fault.isPresent());
    return new ExportRow(place, fields, layout.unit(), read.identity(), fault, csv.raw());
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
    if (!hasOverlong(csv.cells())) {
      return Optional.empty();
    }
    return positions.entrySet().stream()
        .filter(column -> csv.cell(column.getValue()).length() > LONGEST)
        .map(Map.Entry::getKey)
        .sorted()
        .findFirst()
        .map(column -> Phrase.of("FAULT.LONG_CELL").with("column", column).with("most", LONGEST));
  }

  private static boolean hasOverlong(List<String> cells) {
    for (String cell : cells) {
      if (cell.length() > LONGEST) {
        return true;
      }
    }
    return false;
  }

  private Map<String, String> cells(CsvRow csv) {
    var cells = new HashMap<String, String>();
    positions.forEach(
        (column, position) -> {
          String text = csv.cell(position);
          if (isUsable(text)) {
            cells.put(column, text);
          }
        });
    return cells;
  }

  private Map<Field, String> untranslated(CsvRow csv, boolean broken) {
    var fields = new EnumMap<Field, String>(Field.class);
    for (var column : untranslated.entrySet()) {
      String text = csv.cell(column.getValue());
      if (isUsable(text)) {
        put(fields, column.getKey(), text, broken);
      }
    }
    return fields;
  }

  private static boolean isUsable(String text) {
    return !text.isEmpty() && text.length() <= LONGEST;
  }

  private Map<Field, String> fields(Map<Field, String> read, boolean broken) {
    var fields = new EnumMap<Field, String>(Field.class);
    read.forEach((field, text) -> put(fields, field, text, broken));
    return fields;
  }

  private void put(Map<Field, String> fields, Field field, String text, boolean broken) {
    if (!broken || IDENTITY.contains(field)) {
      fields.put(field, OWN.contains(field) ? text : shared(text));
    }
  }

  /** One object for equal texts: scales, codes and bodies come up in thousands of rows. */
  private String shared(String text) {
    var known = texts.putIfAbsent(text, text);
    return known == null ? text : known;
  }
}
