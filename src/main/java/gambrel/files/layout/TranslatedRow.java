package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** The fields of one row of an export, which a layout changes step by step. */
public final class TranslatedRow {
  private final Map<Field, String> texts = new EnumMap<>(Field.class);
  private final Map<Field, Phrase> unreadable = new EnumMap<>(Field.class);
  private Optional<String> identity = Optional.empty();
  private Optional<Phrase> broken = Optional.empty();

  /** The columns that are fields of the stripped texts {@code cells}, which are not blank. */
  TranslatedRow(Map<String, String> cells) {
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

  /** Sets what identifies the weighing, and why the row cannot be used. */
  void complete(Optional<String> identity, Optional<Phrase> broken) {
    this.identity = identity;
    this.broken = broken;
  }

  /** Whether the field has a text. */
  boolean has(Field field) {
    return texts.containsKey(field);
  }

  /** The text of a field by which rows are compared, or empty. */
  String compared(Field field) {
    String text = texts.getOrDefault(field, "");
    return unreadable.containsKey(field) ? text + ExportRow.UNREADABLE : text;
  }

  /** The texts by field, without blank ones. */
  public Map<Field, String> texts() {
    return texts;
  }

  /** The fields that cannot be read; each phrase quotes the cell and says why. */
  public Map<Field, Phrase> unreadable() {
    return unreadable;
  }

  /** Identifies the weighing where there is no ticket, if the layout says so. */
  public Optional<String> identity() {
    return identity;
  }

  /** Why the row cannot be used, if it cannot. */
  public Optional<Phrase> broken() {
    return broken;
  }
}
