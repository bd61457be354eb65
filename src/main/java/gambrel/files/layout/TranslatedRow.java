package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * The fields of one row of an export, which a layout changes step by step.
 *
 * @param texts the texts by field, without blank ones
 * @param unreadable the fields that cannot be read; each phrase quotes the cell and says why
 * @param identity identifies the weighing in place of its ticket, if the layout says so
 * @param labels the net weights in its barcode
 * @param broken why the row cannot be used, if it cannot
 */
public record TranslatedRow(
    Map<Field, String> texts,
    Map<Field, Phrase> unreadable,
    Optional<ExportRow.Identity> identity,
    List<GivenWeight> labels,
    Optional<Phrase> broken) {

  /** The columns that are fields of the stripped texts {@code cells}, which are not blank. */
  TranslatedRow(Map<String, String> cells) {
    this(
        new EnumMap<>(Field.class),
        new EnumMap<>(Field.class),
        Optional.empty(),
        List.of(),
        Optional.empty());
    cells.forEach((column, text) -> Field.of(column).ifPresent(field -> texts.put(field, text)));
  }

  /** Sets the text of a field. */
  void put(Field field, String text) {
    texts.put(field, text);
    unreadable.remove(field);
  }

  /** Replaces the text of a field, if it has one, by the result of {@code reading}. */
  void replace(Field field, UnaryOperator<String> reading) {
    read(field, text -> put(field, reading.apply(text)));
  }

  /** Calls {@code reading} with the text of a field, if it has one; a bad one is refused. */
  void read(Field field, Consumer<String> reading) {
    try {
      Optional.ofNullable(texts.get(field)).ifPresent(reading);
    } catch (BadCell e) {
      refuse(field, e.why());
    }
  }

  /** Keeps the text of a field as one that cannot be read for the reason {@code why}. */
  void refuse(Field field, Phrase why) {
    unreadable.put(
        field, Phrase.of("CELL.UNREADABLE").with("cell", texts.get(field)).with("why", why));
  }

  /** Sets the net weight to a barcode that should give it and does not. */
  void refuseBarcode(String barcode, Phrase why) {
    texts.put(Field.NET, barcode);
    unreadable.put(Field.NET, Phrase.of("CELL.BARCODE").with("why", why));
  }

  /** Whether the field has a text. */
  boolean has(Field field) {
    return texts.containsKey(field);
  }

  /** The text of a field, or empty. */
  public String text(Field field) {
    return texts.getOrDefault(field, "");
  }
}
