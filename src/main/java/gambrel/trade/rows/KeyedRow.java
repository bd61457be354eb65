package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Place;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A row with what it is compared by.
 *
 * @param read the row
 * @param key equal for two rows of the same weighing; of equal rows of one file that each count the
 *     keys differ in their number
 * @param content equal for a row and its repeat
 */
record KeyedRow(ReadRow read, Key key, String content) {
  private static final Set<Field> CONTENT =
      EnumSet.complementOf(EnumSet.of(Field.SCALE, Field.TICKET, Field.OPERATOR, Field.STATUS));

  /**
   * The weighing that a row is of.
   *
   * @param text the ticket; in its place, after a word that says which, the identity of the layout,
   *     the content or the text of a broken row
   * @param day days since 1970 of a ticket with a readable time, else 0
   * @param number of equal rows of a scale that counts no tickets, from 0
   */
  record Key(String scale, String text, long day, int number) {
    private static final String IDENTITY = "identity\n";

    private static Key of(ReadRow read) {
      var row = read.row();
      String ticket = read.ticket();
      if (row.broken().isPresent()) {
        return new Key("", "broken\n" + row.raw(), 0, 0);
      }
      if (row.identity().isPresent()) {
        var identity = row.identity().get();
        var values = identity.fields().stream().map(field -> content(read, field));
        var texts = Stream.concat(values, identity.others().stream());
        return new Key("", texts.collect(Collectors.joining("\n", IDENTITY, "")), 0, 0);
      }
      if (ticket.isEmpty()) {
        return new Key(read.scale(), "content\n" + content(read), 0, 0);
      }
      return read.time()
          .map(time -> new Key(read.scale(), ticket, time.toLocalDate().toEpochDay(), 0))
          .orElseGet(() -> new Key(read.scale(), ticket + '\n' + row.get(Field.TIME), 0, 0));
    }

    /** Whether the row's layout gives it an identity instead of a ticket. */
    boolean isIdentity() {
      return text.startsWith(IDENTITY);
    }

    Key numbered(int place) {
      return new Key(scale, text, day, place);
    }
  }

  /**
   * The rows that must be compared: void rows, rows whose ticket a void row names or another row
   * prints again, and rows that share their key with another row. Rows that a correction removes
   * are left out.
   */
  static List<KeyedRow> toCompare(List<ReadRow> rows) {
    var standing = rows.stream().filter(row -> !row.removed()).toList();
    var named =
        standing.stream().flatMap(row -> namedTicket(row).stream()).collect(Collectors.toSet());
    var keys = standing.stream().map(Key::of).toList();
    var once = new HashSet<Key>();
    var shared = keys.stream().filter(key -> !once.add(key)).collect(Collectors.toSet());
    return IntStream.range(0, keys.size())
        .filter(
            i ->
                shared.contains(keys.get(i))
                    || standing.get(i).status().isVoid()
                    || !named.isEmpty() && named.contains(standing.get(i).ticketKey()))
        .mapToObj(i -> new KeyedRow(standing.get(i), keys.get(i), content(standing.get(i))))
        .toList();
  }

  /** The ticket that a row voids or prints again. */
  private static Optional<String> namedTicket(ReadRow row) {
    return row.status().isRepeat()
        ? Optional.of(row.ticketKey())
        : row.status().voids().map(ticket -> Tickets.key(row.scale(), ticket));
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

  /** What is equal for two rows of which one repeats the other: content, of a void row status. */
  Object compared() {
    return status().isVoid() ? status() : content;
  }

  /** Whether the row has the ticket of a weighing and all of its content but the time. */
  boolean printsAgain(KeyedRow other) {
    return !other.status().isVoid()
        && !other.status().isRepeat()
        && !read.ticket().isEmpty()
        && read.ticketKey().equals(other.read.ticketKey())
        && CONTENT.stream()
            .filter(field -> field != Field.TIME)
            .allMatch(field -> content(read, field).equals(content(other.read, field)));
  }

  /** The same row under another key. */
  KeyedRow under(Key other) {
    return new KeyedRow(read, other, content);
  }

  Place place() {
    return read.place();
  }

  Status status() {
    return read.status();
  }
}
