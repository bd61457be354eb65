package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** The fields of one row while a layout translates them. */
final class TranslatedRow {
  private final Map<Field, String> texts;
  private final Map<Field, Phrase> unreadable = new EnumMap<>(Field.class);

  /** A row of texts by field, without blank ones. */
  TranslatedRow(Map<Field, String> texts) {
    this.texts = texts;
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
      if (texts.containsKey(field)) {
        reading.accept(texts.get(field));
      }
    } catch (BadCell e) {
      refuse(field, e.why());
    }
  }

  /** Keeps the text of a field, but as one that cannot be read for the reason {@code why}. */
  void refuse(Field field, Phrase why) {
    unreadable.put(
        field, Phrase.of("CELL.UNREADABLE").with("cell", texts.get(field)).with("why", why));
  }

  /** Marks the net weight as one that the barcode should give and cannot. */
  void refuseBarcode(String barcode, Phrase why) {
    texts.put(Field.NET, barcode);
    unreadable.put(Field.NET, Phrase.of("CELL.BARCODE").with("why", why));
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

  Map<Field, String> texts() {
    return texts;
  }

  Map<Field, Phrase> unreadable() {
    return unreadable;
  }
}
