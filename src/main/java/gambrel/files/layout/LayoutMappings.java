package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.SettingsFile;
import gambrel.trade.notice.Phrase;
import java.util.HashMap;
import java.util.Map;

/** The keys of a layout that name columns, constants and foreign values. */
final class LayoutMappings {
  private static final String COLUMN = "column.";
  private static final String CONSTANT = "constant.";
  private static final String VALUE = "value.";

  private final SettingsFile file;
  private final Map<String, String> columns = new HashMap<>();
  private final Map<String, String> constants = new HashMap<>();
  private final Map<String, Map<String, String>> values = new HashMap<>();

  LayoutMappings(SettingsFile file) {
    this.file = file;
  }

  /**
   * Reads them.
   *
   * @param header whether columns may be given by their header text
   */
  void read(boolean header) {
    for (String key : file.keys()) {
      if (key.startsWith(COLUMN) || key.startsWith(CONSTANT) || key.startsWith(VALUE)) {
        readOne(key, header);
      }
    }
  }

  private void readOne(String key, boolean header) {
    String kind = key.substring(0, key.indexOf('.') + 1);
    var rest = key.substring(kind.length()).split("\\.", 2);
    try {
      String column = LayoutTypes.column(rest[0].strip());
      if (kind.equals(VALUE)) {
        String foreign = rest.length > 1 ? rest[1].strip() : "";
        values.computeIfAbsent(column, c -> new HashMap<>()).put(foreign, file.text(key));
      } else if (kind.equals(CONSTANT)) {
        constants.put(column, file.text(key));
      } else {
        columns.put(column, reference(file.text(key), header));
      }
    } catch (BadCell e) {
      file.refuse(key, e);
    }
  }

  private static String reference(String text, boolean header) {
    if (text.isEmpty() || LayoutColumns.isNumber(text) && Integer.parseInt(text) > 0) {
      return text;
    }
    if (LayoutColumns.isNumber(text) || !header) {
      throw new BadCell(Phrase.of("CELL.NO_COLUMN_NUMBER").with("named", text));
    }
    return text;
  }

  /** Header text or number by column. */
  Map<String, String> columns() {
    return columns;
  }

  /** What stands for blank cells, by column. */
  Map<String, String> constants() {
    return constants;
  }

  /** Own values by column and foreign value. */
  Map<String, Map<String, String>> values() {
    return values;
  }

  /** Whether the layout says where to find a column, or what stands in it. */
  boolean tells(String column) {
    return !columns.getOrDefault(column, "").isEmpty() || constants.containsKey(column);
  }
}
