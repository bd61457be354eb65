package gambrel.trade.rows;

import gambrel.trade.measure.GivenWeight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One row of an export as text, after its layout.
 *
 * @param place file and first line
 * @param values stripped text by the field's ordinal, empty where there is none
 * @param unit the unit that the layout gives to rows without one
 * @param identity what makes it a weighing in place of its ticket, if the layout says so
 * @param broken what is wrong with the row as text, if it could not be taken apart
 * @param raw the row as it stands in the file
 * @param labels the weights on the label, by its barcode; none if a correction gives the weight
 * @param unreadable the fields whose cell the layout cannot read; each phrase quotes the cell and
 *     says why
 */
public record ExportRow(
    Place place,
    List<String> values,
    Optional<WeightUnit> unit,
    Optional<Identity> identity,
    Optional<Phrase> broken,
    String raw,
    List<GivenWeight> labels,
    Map<Field, Phrase> unreadable) {
  /**
   * What makes a row a weighing in place of its ticket.
   *
   * @param fields the fields, as they are after corrections
   * @param others the texts of columns that are no fields
   */
  public record Identity(Set<Field> fields, List<String> others) {}

  /** Ends the text of a cell that the layout cannot read, so that it is never read as a value. */
  public static final String UNREADABLE = " (?)";

  /** The text of a cell, or empty; {@link #UNREADABLE} follows one that cannot be read. */
  public String get(Field field) {
    String text = values.get(field.ordinal());
    return unreadable.containsKey(field) ? text + UNREADABLE : text;
  }

  /** The cell as a notice quotes it: its text, and why the layout cannot read it. */
  public Value quoted(Field field) {
    return unreadable.containsKey(field) ? unreadable.get(field) : new Value.Text(get(field));
  }

  /** The row as one that voids {@code other}: with the content of that row. */
  public ExportRow voiding(ExportRow other) {
    var content = new ArrayList<>(other.values);
    content.set(Field.STATUS.ordinal(), "void");
    return new ExportRow(
        place, content, unit, other.identity, broken, raw, other.labels, other.unreadable);
  }

  /** The row as one without a status that cannot be used; {@code why} says what is wrong. */
  public ExportRow unfit(Phrase why) {
    var plain = with(Field.STATUS, "");
    return new ExportRow(
        place, plain.values, unit, identity, Optional.of(why), raw, labels, plain.unreadable);
  }

  /** The same row with one cell changed. */
  public ExportRow with(Field field, String value) {
    var changed = new ArrayList<>(values);
    changed.set(field.ordinal(), value.strip());
    var others = new HashMap<>(unreadable);
    others.remove(field);
    boolean weight = field == Field.NET || field == Field.GROSS;
    var left = weight ? List.<GivenWeight>of() : labels;
    return new ExportRow(place, changed, unit, identity, broken, raw, left, others);
  }
}
