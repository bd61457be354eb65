package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Place;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A row with the texts by which it is compared with other rows.
 *
 * @param read the row
 * @param key equal for two rows of the same weighing
 * @param content equal for a row and its repeat
 */
record KeyedRow(ReadRow read, String key, String content) {
  /** The first word of the key of a row whose layout gives it an identity instead of a ticket. */
  static final String IDENTITY = "identity\n";

  private static final Set<Field> CONTENT =
      EnumSet.complementOf(EnumSet.of(Field.SCALE, Field.TICKET, Field.OPERATOR, Field.STATUS));

  /**
   * The rows that must be compared: void rows, rows whose ticket a void row names, and rows that
   * share their key with another row. Rows that a correction removes are left out.
   */
  static List<KeyedRow> toCompare(List<ReadRow> rows) {
    var standing = rows.stream().filter(row -> !row.removed()).toList();
    var voided =
        standing.stream()
            .flatMap(row -> row.status().voids().map(t -> Tickets.key(row.scale(), t)).stream())
            .collect(Collectors.toSet());
    var keys = standing.parallelStream().map(KeyedRow::key).toList();
    var numbers = keys.stream().collect(Collectors.toMap(key -> key, key -> 1, Integer::sum));
    return IntStream.range(0, keys.size())
        .filter(
            i ->
                standing.get(i).status().isVoid()
                    || numbers.get(keys.get(i)) > 1
                    || !voided.isEmpty() && voided.contains(standing.get(i).ticketKey()))
        .mapToObj(i -> new KeyedRow(standing.get(i), keys.get(i), content(standing.get(i))))
        .toList();
  }

  private static String key(ReadRow read) {
    var row = read.row();
    String ticket = read.ticket();
    if (row.broken().isPresent()) {
      return "broken\n" + row.raw();
    }
    if (ticket.isEmpty()) {
      return row.identity()
          .map(IDENTITY::concat)
          .orElseGet(() -> "content\n" + read.scale() + '\n' + content(read));
    }
    String day =
        read.time()
            .map(t -> Long.toString(t.toLocalDate().toEpochDay()))
            .orElseGet(() -> "? " + row.get(Field.TIME));
    return "ticket\n" + read.scale() + '\n' + ticket + '\n' + day;
  }

  private static String content(ReadRow read) {
    return CONTENT.stream()
        .map(field -> content(read, field))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  /** The cell's value as a text that is equal for equal values, or its text if it has no value. */
  private static String content(ReadRow read, Field field) {
    String text = read.row().get(field);
    return switch (field) {
      // A cell never begins with a blank, so this cannot equal a time that cannot be read.
      case TIME -> read.time().map(t -> " " + t.toEpochSecond() + '.' + t.getNano()).orElse(text);
      case UNIT -> read.unit().map(WeightUnit::id).orElse(text.toLowerCase(Locale.ROOT));
      case NET, GROSS, TARE, PIECES -> DecimalText.canonical(text);
      default -> text;
    };
  }

  /** The same row under another key. */
  KeyedRow under(String other) {
    return new KeyedRow(read, other, content);
  }

  Place place() {
    return read.place();
  }

  Status status() {
    return read.status();
  }
}
