package gambrel.files.layout;

import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.Field;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Makes fields of the stripped cells of a row, which are given by column. */
@FunctionalInterface
public interface RowTranslation {
  /** Cells that need no translation. */
  RowTranslation PLAIN =
      cells -> {
        var fields = new EnumMap<Field, String>(Field.class);
        cells.forEach((column, text) -> Field.of(column).ifPresent(f -> fields.put(f, text)));
        return new Result(fields, Optional.empty(), Optional.empty());
      };

  /** The fields of a row; {@code cells} has no blank ones. */
  Result translate(Map<String, String> cells);

  /**
   * A row in the program's own words.
   *
   * @param fields without blank ones
   * @param identity what makes it a weighing where there is no ticket, if the layout says so
   * @param broken why it cannot be used
   */
  record Result(Map<Field, String> fields, Optional<String> identity, Optional<Phrase> broken) {}
}
