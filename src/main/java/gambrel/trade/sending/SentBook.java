package gambrel.trade.sending;

import gambrel.trade.register.RegisterRow;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What became of every statement that was mailed. Immutable. */
public final class SentBook {
  private final Map<List<Object>, SentRow> rows = new HashMap<>();

  /** A book of {@code rows}; of several about one revision the last counts. */
  public SentBook(Collection<SentRow> rows) {
    rows.forEach(row -> this.rows.put(List.of(row.customer(), row.body(), row.revision()), row));
  }

  /** All rows, by customer, body and revision. */
  public List<SentRow> rows() {
    return rows.values().stream().sorted(SentRow.ORDER).toList();
  }

  /** What became of a statement; empty if it was never mailed. */
  public Optional<SentRow> of(RegisterRow statement) {
    return Optional.ofNullable(
        rows.get(List.of(statement.customer(), statement.body(), statement.revision())));
  }

  /** This book with rows that replace those about the same statements. */
  public SentBook with(Collection<SentRow> changed) {
    var book = new SentBook(rows.values());
    book.rows.putAll(new SentBook(changed).rows);
    return book;
  }

  /** The rows up to a moment. */
  public SentBook until(LocalDateTime moment) {
    return new SentBook(rows.values().stream().filter(r -> !r.at().isAfter(moment)).toList());
  }
}
