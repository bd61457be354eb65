package gambrel.weighing;

import java.util.Locale;
import java.util.Optional;

/** The columns of an export that the program reads. */
public enum Field {
  /** The scale. */
  SCALE,
  /** The scale's running number of the weighing. */
  TICKET,
  /** When. */
  TIME,
  /** The body, or a tag of it. */
  BODY,
  /** What was keyed for the thing. */
  CODE,
  /** Net weight. */
  NET,
  /** Gross weight. */
  GROSS,
  /** Tare weight. */
  TARE,
  /** Unit of the three weights. */
  UNIT,
  /** Pieces in the tray or pack. */
  PIECES,
  /** Who keyed it. */
  OPERATOR,
  /** The batch. */
  BATCH,
  /** The customer whose pack it is outright. */
  CUSTOMER,
  /** Blank, ok, void or void:TICKET. */
  STATUS;

  /** The field that a header or a correction names. */
  public static Optional<Field> of(String text) {
    for (var field : values()) {
      if (field.id().equals(text.strip().toLowerCase(Locale.ROOT))) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }

  /** The column's name. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
