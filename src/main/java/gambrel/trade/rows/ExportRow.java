package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * One row of an export as text, with the columns of the program.
 *
 * @param place file and first line
 * @param cells stripped text by field; an absent or blank field has no entry
 * @param unit the layout's unit for rows without a unit; empty if it gives none
 * @param identity the text that the layout makes the row's identity if its scale counts no tickets
 * @param broken the fault of a row that cannot be split into cells
 * @param raw the row as the file has it
 */
public record ExportRow(
    Place place,
    Map<Field, String> cells,
    Optional<WeightUnit> unit,
    Optional<String> identity,
    Optional<Phrase> broken,
    String raw) {
  /** Copies the cells that are not empty. */
  public ExportRow {
    var filled = new EnumMap<Field, String>(Field.class);
    filled.putAll(cells);
    filled.values().removeIf(String::isEmpty);
    cells = Collections.unmodifiableMap(filled);
  }

  /** The text of a cell, or empty. */
  public String get(Field field) {
    return cells.getOrDefault(field, "");
  }

  /** The same row with one cell changed. */
  public ExportRow with(Field field, String value) {
    var changed = new EnumMap<Field, String>(Field.class);
    changed.putAll(cells);
    changed.put(field, value.strip());
    return new ExportRow(place, changed, unit, identity, broken, raw);
  }
}
