package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.NameComparison;
import gambrel.files.folder.SettingsFile;
import gambrel.trade.notice.Phrase;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The keys of a layout that begin with {@code column.}, {@code constant.} or {@code value.}.
 *
 * @param columns header text or number by column
 * @param constants the texts for blank cells by column
 * @param values own values by column and foreign value
 */
record LayoutMappings(
    Map<String, String> columns,
    Map<String, String> constants,
    Map<String, Map<String, String>> values) {
  /** The keys but those of values, which may hold any foreign word. */
  static final List<String> KEYS =
      Stream.of("column.", "constant.")
          .flatMap(kind -> LayoutColumns.ALL.stream().map(column -> kind + column))
          .sorted()
          .toList();

  private static final Set<String> KINDS = Set.of("column", "constant", "value");

  /**
   * Reads the keys of a file; a wrong one is refused.
   *
   * @param header whether columns may be given by their header text
   */
  static LayoutMappings read(SettingsFile file, boolean header) {
    var mappings = new LayoutMappings(new HashMap<>(), new HashMap<>(), new HashMap<>());
    for (String key : file.keys()) {
      var parts = key.split("\\.", 3);
      parts[0] = NameComparison.plain(parts[0]);
      if (parts.length > 1 && KINDS.contains(parts[0])) {
        try {
          String column = LayoutTypes.column(NameComparison.plain(parts[1]));
          boolean plain = parts.length == 2;
          String text = file.text(plain ? parts[0] + '.' + column : key);
          mappings.read(parts, column, text, header);
        } catch (BadCell e) {
          file.refuse(key, e);
        }
      }
    }
    return mappings;
  }

  private void read(String[] key, String column, String text, boolean header) {
    switch (key[0]) {
      case "column" -> columns.put(column, reference(text, header));
      case "constant" -> constants.put(column, text);
      default ->
          values
              .computeIfAbsent(column, c -> new HashMap<>())
              .put(key.length > 2 ? key[2].strip() : "", text);
    }
  }

  private static String reference(String text, boolean header) {
    boolean number = LayoutColumns.isNumber(text);
    if (!text.isEmpty() && (number ? Integer.parseInt(text) == 0 : !header)) {
      throw new BadCell(Phrase.of("CELL.NO_COLUMN_NUMBER").with("named", text));
    }
    return text;
  }

  /** Whether the layout gives a column's place or a constant for it. */
  boolean gives(String column) {
    return !columns.getOrDefault(column, "").isEmpty() || constants.containsKey(column);
  }
}
