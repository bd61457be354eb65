package gambrel.trade.rows;

import gambrel.trade.measure.FileWord;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

  private static final Set<Field> IDS = EnumSet.of(SCALE, TICKET, BODY, CODE, BATCH, CUSTOMER);

  /** Every cell of every export is looked up by its column. */
  private static final Map<String, Field> BY_ID =
      Stream.of(values()).collect(Collectors.toUnmodifiableMap(Field::id, Function.identity()));

  /** Whether its cells are ids. */
  public boolean isId() {
    return IDS.contains(this);
  }

  /**
   * The field that a text names, without regard to case or outer blanks; empty if it names none.
   */
  public static Optional<Field> of(String text) {
    return Optional.ofNullable(BY_ID.get(text.strip().toLowerCase(Locale.ROOT)));
  }
}
