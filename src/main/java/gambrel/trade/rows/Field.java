package gambrel.trade.rows;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

  private static final Map<String, Field> BY_ID =
      Stream.of(values()).collect(Collectors.toMap(Field::id, field -> field));

  private final String id = name().toLowerCase(Locale.ROOT);

  /** The field that a header or a correction names. */
  public static Optional<Field> of(String text) {
    var field = BY_ID.get(text);
    return Optional.ofNullable(
        field == null ? BY_ID.get(text.strip().toLowerCase(Locale.ROOT)) : field);
  }

  /** The column's name. */
  public String id() {
    return id;
  }
}
