package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One row of an export as text, after its layout.
 *
 * @param place file and first line
 * @param values stripped text by the field's ordinal, empty where there is none; ends with the last
 *     that is not empty
 * @param unit the unit that the layout gives to rows without one
 * @param identity what makes it a weighing where its scale counts no tickets, if the layout says so
 * @param broken what is wrong with the row as text, if it could not be taken apart
 * @param raw the row as it stands in the file
 */
public record ExportRow(
    Place place,
    List<String> values,
    Optional<WeightUnit> unit,
    Optional<String> identity,
    Optional<Phrase> broken,
    String raw) {
  private static final Field[] FIELDS = Field.values();

  /** A row whose {@code cells} are stripped; a field that is absent or blank has no entry. */
  public ExportRow(
      Place place,
      Map<Field, String> cells,
      Optional<WeightUnit> unit,
      Optional<String> identity,
      Optional<Phrase> broken,
      String raw) {
    this(place, values(cells), unit, identity, broken, raw);
  }

  /** A row without an identity of its own. */
  public ExportRow(
      Place place,
      Map<Field, String> cells,
      Optional<WeightUnit> unit,
      Optional<Phrase> broken,
      String raw) {
    this(place, cells, unit, Optional.empty(), broken, raw);
  }

  private static List<String> values(Map<Field, String> cells) {
    var values = new String[FIELDS.length];
    int length = 0;
    for (int i = 0; i < values.length; i++) {
      values[i] = cells.getOrDefault(FIELDS[i], "");
      length = values[i].isEmpty() ? length : i + 1;
    }
    return List.of(Arrays.copyOf(values, length));
  }

  /** Stripped text by field; a field that is absent or blank has no entry. */
  public Map<Field, String> cells() {
    var map = new EnumMap<Field, String>(Field.class);
    for (int i = 0; i < values.size(); i++) {
      if (!values.get(i).isEmpty()) {
        map.put(FIELDS[i], values.get(i));
      }
    }
    return map;
  }

  /** The text of a cell, or empty. */
  public String get(Field field) {
    return field.ordinal() < values.size() ? values.get(field.ordinal()) : "";
  }

  /** The same row with one cell changed. */
  public ExportRow with(Field field, String value) {
    var changed = cells();
    changed.put(field, value.strip());
    return new ExportRow(place, changed, unit, identity, broken, raw);
  }
}
