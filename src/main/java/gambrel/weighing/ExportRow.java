package gambrel.weighing;

import gambrel.measure.WeightUnit;
import gambrel.notice.Place;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * One row of an export as text, after its layout.
 *
 * @param place file and first line
 * @param cells stripped text by field; a field that is absent or blank has no entry
 * @param unit the unit that the layout gives to rows without one
 * @param identity what makes it a weighing where its scale counts no tickets, if the layout says so
 * @param broken what is wrong with the row as text, if it could not be taken apart
 * @param raw the row as it stands in the file
 */
public record ExportRow(
    Place place,
    Map<Field, String> cells,
    Optional<WeightUnit> unit,
    Optional<String> identity,
    Optional<String> broken,
    String raw) {

  /** A row without an identity of its own. */
  public ExportRow(
      Place place,
      Map<Field, String> cells,
      Optional<WeightUnit> unit,
      Optional<String> broken,
      String raw) {
    this(place, cells, unit, Optional.empty(), broken, raw);
  }

  /** The text of a cell, or empty. */
  public String get(Field field) {
    return cells.getOrDefault(field, "");
  }

  /** The same row with one cell changed. */
  public ExportRow with(Field field, String value) {
    var changed = new EnumMap<Field, String>(Field.class);
    changed.putAll(cells);
    if (value.isBlank()) {
      changed.remove(field);
    } else {
      changed.put(field, value.strip());
    }
    return new ExportRow(place, changed, unit, identity, broken, raw);
  }
}
