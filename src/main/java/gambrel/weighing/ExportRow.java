package gambrel.weighing;

import gambrel.measure.WeightUnit;
import gambrel.notice.Phrase;
import gambrel.notice.Place;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** One row of an export as text, after its layout; immutable. */
public final class ExportRow {
  private static final Field[] FIELDS = Field.values();

  private final Place place;

  /** By the field's number; null where there is none, and only as long as needed. */
  private final String[] cells;

  private final Optional<WeightUnit> unit;
  private final Optional<String> identity;
  private final Optional<Phrase> broken;
  private final String raw;

  /**
   * A row.
   *
   * @param place file and first line
   * @param cells stripped text by field; a field that is absent or blank has no entry
   * @param unit the unit that the layout gives to rows without one
   * @param identity what makes it a weighing where its scale counts no tickets, if the layout says so
   * @param broken what is wrong with the row as text, if it could not be taken apart
   * @param raw the row as it stands in the file
   */
  public ExportRow(
      Place place,
      Map<Field, String> cells,
      Optional<WeightUnit> unit,
      Optional<String> identity,
      Optional<Phrase> broken,
      String raw) {
    this(place, array(cells), unit, identity, broken, raw);
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

  private ExportRow(
      Place place,
      String[] cells,
      Optional<WeightUnit> unit,
      Optional<String> identity,
      Optional<Phrase> broken,
      String raw) {
    this.place = place;
    this.cells = cells;
    this.unit = unit;
    this.identity = identity;
    this.broken = broken;
    this.raw = raw;
  }

  private static String[] array(Map<Field, String> cells) {
    var array = new String[FIELDS.length];
    int length = 0;
    for (int i = 0; i < array.length; i++) {
      array[i] = cells.get(FIELDS[i]);
      length = array[i] == null ? length : i + 1;
    }
    return Arrays.copyOf(array, length);
  }

  /** File and first line. */
  public Place place() {
    return place;
  }

  /** Stripped text by field; a field that is absent or blank has no entry. */
  public Map<Field, String> cells() {
    var map = new EnumMap<Field, String>(Field.class);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] != null) {
        map.put(FIELDS[i], cells[i]);
      }
    }
    return map;
  }

  /** The unit that the layout gives to rows without one. */
  public Optional<WeightUnit> unit() {
    return unit;
  }

  /** What makes it a weighing where its scale counts no tickets, if the layout says so. */
  public Optional<String> identity() {
    return identity;
  }

  /** What is wrong with the row as text, if it could not be taken apart. */
  public Optional<Phrase> broken() {
    return broken;
  }

  /** The row as it stands in the file. */
  public String raw() {
    return raw;
  }

  /** The text of a cell, or empty. */
  public String get(Field field) {
    int at = field.ordinal();
    return at < cells.length && cells[at] != null ? cells[at] : "";
  }

  /** The same row with one cell changed. */
  public ExportRow with(Field field, String value) {
    var changed = cells();
    if (value.isBlank()) {
      changed.remove(field);
    } else {
      changed.put(field, value.strip());
    }
    return new ExportRow(place, changed, unit, identity, broken, raw);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ExportRow row
        && place.equals(row.place)
        && Arrays.equals(cells, row.cells)
        && unit.equals(row.unit)
        && identity.equals(row.identity)
        && broken.equals(row.broken)
        && raw.equals(row.raw);
  }

  @Override
  public int hashCode() {
    return place.hashCode();
  }

  @Override
  public String toString() {
    return place + " " + cells();
  }
}
