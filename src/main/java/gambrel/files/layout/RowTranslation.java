package gambrel.files.layout;

import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.Field;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Makes fields of the cells of a row. */
@FunctionalInterface
public interface RowTranslation {
  /** Cells that need no translation. */
  RowTranslation PLAIN =
      cells -> new Result(fields(cells), Map.of(), Optional.empty(), Optional.empty());

  /**
   * The fields of a row.
   *
   * @param cells stripped texts by column, without blank ones
   */
  Result translate(Map<String, String> cells);

  /** The cells of the columns that are fields. */
  static Map<Field, String> fields(Map<String, String> cells) {
    var fields = new EnumMap<Field, String>(Field.class);
    cells.forEach((column, text) -> Field.of(column).ifPresent(f -> fields.put(f, text)));
    return fields;
  }

  /**
   * A translated row.
   *
   * @param fields texts by field, without blank ones
   * @param unreadable the fields that cannot be read; each phrase quotes the cell and says why
   * @param identity identifies the weighing where there is no ticket, if the layout says so
   * @param broken why the row cannot be used
   */
  record Result(
      Map<Field, String> fields,
      Map<Field, Phrase> unreadable,
      Optional<String> identity,
      Optional<Phrase> broken) {}
}
