package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
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
 * @param unreadable the fields whose cell the layout cannot read; each phrase quotes the cell and
 *     says why
 */
public record ExportRow(
    Place place,
    List<String> values,
    Optional<WeightUnit> unit,
    Optional<String> identity,
    Optional<Phrase> broken,
    String raw,
    Map<Field, Phrase> unreadable) {
  /** Ends the text of a cell that the layout cannot read, so that it is never read as a value. */
  public static final String UNREADABLE = " (?)";

  private static final Field[] FIELDS = Field.values();

  /** A row whose {@code cells} are stripped; a field that is absent or blank has no entry. */
  public ExportRow(
      Place place,
      Map<Field, String> cells,
      Optional<WeightUnit> unit,
      Optional<String> identity,
      Optional<Phrase> broken,
      String raw) {
    this(place, values(cells), unit, identity, broken, raw, Map.of());
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

  /** The text of a cell, or empty; {@link #UNREADABLE} follows one that cannot be read. */
  public String get(Field field) {
    String text = field.ordinal() < values.size() ? values.get(field.ordinal()) : "";
    return unreadable.containsKey(field) ? text + UNREADABLE : text;
  }

  /** The cell as a notice quotes it: its text, and why the layout cannot read it. */
  public Value quoted(Field field) {
    return unreadable.containsKey(field) ? unreadable.get(field) : new Value.Text(get(field));
  }

  /** The same row with these fields whose cells cannot be read. */
  public ExportRow unreadable(Map<Field, Phrase> fields) {
    return new ExportRow(place, values, unit, identity, broken, raw, Map.copyOf(fields));
  }

  /** The same row with one cell changed. */
  public ExportRow with(Field field, String value) {
    var changed = cells();
    changed.put(field, value.strip());
    var others = new HashMap<>(unreadable);
    others.remove(field);
    return new ExportRow(place, changed, unit, identity, broken, raw).unreadable(others);
  }
}
