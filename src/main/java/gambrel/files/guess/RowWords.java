package gambrel.files.guess;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** Says in a line how a row is read. */
final class RowWords {
  private static final int LONGEST = 100;

  private RowWords() {}

  /** A text on one line that is not too long. */
  static String cut(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + '…';
  }

  /** The time of a row on the shop's clock; as it stands if it cannot be read. */
  static String time(ReadRow row) {
    return row.time()
        .map(time -> time.toLocalDateTime().toString())
        .orElseGet(() -> row.row().get(Field.TIME));
  }

  /** The fields of a row, or why it is broken. */
  static String told(ReadRow row) {
    return row.row()
        .broken()
        .flatMap(fault -> AsRead.problem(row))
        .orElseGet(() -> told(row, EnumSet.complementOf(EnumSet.of(Field.UNIT, Field.OPERATOR))));
  }

  /** Where a row stands, and what was weighed. */
  static String shortly(ReadRow row) {
    var weight = row.row().get(Field.NET).isEmpty() ? Field.GROSS : Field.NET;
    return row.place() + " " + told(row, EnumSet.of(Field.TICKET, Field.BODY, Field.CODE, weight));
  }

  private static String told(ReadRow row, Set<Field> fields) {
    return fields.stream()
        .filter(field -> !row.row().get(field).isEmpty())
        .map(field -> cut(cell(field, row)))
        .collect(Collectors.joining(", "));
  }

  /** A field of a row; a weight with its unit. */
  static String cell(Field field, ReadRow row) {
    boolean legible = !row.row().unreadable().containsKey(field);
    String unit = row.unit().map(WeightUnit::id).orElseGet(() -> row.row().get(Field.UNIT));
    return switch (field) {
      case TIME -> legible ? "time " + time(row) : AsRead.cell(field, row);
      case NET, GROSS, TARE -> AsRead.cell(field, row) + (legible ? ' ' + unit : "");
      default -> AsRead.cell(field, row);
    };
  }
}
