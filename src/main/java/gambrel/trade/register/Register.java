package gambrel.trade.register;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every statement ever issued. Immutable. */
public final class Register {
  private final List<RegisterRow> rows;
  private final List<RegisterRow> latest;
  private final Map<String, RegisterRow> last = new HashMap<>();
  private final Map<String, LocalDateTime> first = new HashMap<>();

  /** A register of {@code rows}, in any order. */
  public Register(Collection<RegisterRow> rows) {
    this.rows = rows.stream().sorted(RegisterRow.ORDER).toList();
    for (var row : this.rows) {
      String key = key(row.customer(), row.body());
      last.put(key, row);
      first.merge(key, row.issued(), (one, other) -> one.isBefore(other) ? one : other);
    }
    latest = last.values().stream().sorted(RegisterRow.ORDER).toList();
  }

  private static String key(String customer, String body) {
    return customer + '\n' + body;
  }

  /** All rows, by customer, body and revision. */
  public List<RegisterRow> rows() {
    return rows;
  }

  /** The latest statement of a customer about a body. */
  public Optional<RegisterRow> last(String customer, String body) {
    return Optional.ofNullable(last.get(key(customer, body)));
  }

  /** The latest statement of each customer about each body, in register order. */
  public List<RegisterRow> latest() {
    return latest;
  }

  /** When the first statement of the row's customer about its body was issued. */
  public LocalDateTime since(RegisterRow row) {
    return first.get(key(row.customer(), row.body()));
  }

  /** The number of the next statement; {@code first} if none has a number yet. */
  public int nextNumber(int first) {
    return rows.stream()
        .flatMap(row -> row.number().stream())
        .max(Comparator.naturalOrder())
        .map(last -> Math.addExact(last, 1))
        .orElse(first);
  }

  /** The statement that a row replaces; empty if it replaces none. */
  public Optional<RegisterRow> replaced(RegisterRow row) {
    return rows.stream()
        .filter(other -> row.replaces().equals(Optional.of(other.revision())))
        .filter(o -> o.customer().equals(row.customer()) && o.body().equals(row.body()))
        .findFirst();
  }

  /** The statements issued at one moment that no later one replaces, in register order. */
  public List<RegisterRow> issuedAt(LocalDateTime moment) {
    return latest.stream().filter(row -> row.issued().equals(moment)).toList();
  }

  /** This register with more rows. */
  public Register with(Collection<RegisterRow> more) {
    var all = new ArrayList<>(rows);
    all.addAll(more);
    return new Register(all);
  }
}
