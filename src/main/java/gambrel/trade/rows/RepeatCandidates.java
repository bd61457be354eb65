package gambrel.trade.rows;

import gambrel.trade.shop.IdIndex;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;

/**
 * The rows that have to be compared with others: void rows, rows whose ticket a void row names, and
 * rows that share their key with another row. Most rows of a shop are none of these, and their
 * content is never put together.
 */
public final class RepeatCandidates {
  private RepeatCandidates() {}

  /** Those of {@code rows}, in the same order; a row that a correction removes is none. */
  public static List<KeyedRow> of(List<ReadRow> rows, RowReader reader) {
    var standing = rows.stream().filter(row -> !row.removed()).toList();
    var numbers = new HashMap<String, Integer>();
    var voidedTickets = new HashSet<String>();
    for (var row : standing) {
      numbers.merge(reader.key(row), 1, Integer::sum);
      if (row.status() instanceof Status.VoidTicket other) {
        voidedTickets.add(ticket(row, other.ticket()));
      }
    }
    return standing.stream()
        .filter(
            row ->
                row.status().isVoid()
                    || !voidedTickets.isEmpty() && voidedTickets.contains(ticket(row, row.ticket()))
                    || numbers.get(reader.key(row)) > 1)
        .map(reader::keyed)
        .toList();
  }

  /** What rows of one scale have in common that mean the same ticket. */
  static String ticket(ReadRow row, String ticket) {
    return row.scale() + '\n' + IdIndex.withoutZeros(ticket);
  }
}
