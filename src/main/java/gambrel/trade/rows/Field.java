package gambrel.trade.rows;

import gambrel.trade.measure.FileWord;
import java.util.Optional;

/** The columns of an export that the program reads. */
public enum Field implements FileWord {
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

  /**
   * The field that a text names, without regard to case or outer blanks; empty if it names none.
   */
  public static Optional<Field> of(String text) {
    return FileWord.find(Field.class, text);
  }
}
