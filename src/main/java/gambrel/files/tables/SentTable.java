package gambrel.files.tables;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.sending.Reply;
import gambrel.trade.sending.SentBook;
import gambrel.trade.sending.SentRow;
import gambrel.trade.sending.SentState;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** {@code data/sent.csv}: what was mailed, as a table and back. */
public final class SentTable {
  private static final Columns<SentRow> COLUMNS =
      new Columns<SentRow>(WeightUnit.KG)
          .add("customer", SentRow::customer)
          .add("body", SentRow::body)
          .add("revision", SentRow::revision)
          .add("number", SentRow::number)
          .add("address", SentRow::address)
          .add("state", row -> row.reply().state().id())
          .add("at", row -> row.at().format(RegisterTable.ISSUED))
          .add("message_id", SentRow::messageId);

  private SentTable() {}

  /** The table of a book. */
  public static Table of(String name, SentBook book) {
    return COLUMNS.table(name, () -> book.rows().stream());
  }

  /** Whether a header is that of the table. */
  public static boolean fits(List<String> header) {
    return header.equals(COLUMNS.names());
  }

  /**
   * Reads the rows of a book.
   *
   * @param replies why messages were refused, by their id
   * @throws IllegalArgumentException if a row was not written by this program
   */
  public static SentBook read(List<List<String>> rows, Map<String, Reply> replies) {
    return new SentBook(rows.stream().map(row -> row(row, replies)).toList());
  }

  private static SentRow row(List<String> cells, Map<String, Reply> replies) {
    try {
      String messageId = Columns.unguard(cells.get(7));
      var state = SentState.valueOf(cells.get(5).toUpperCase(Locale.ROOT));
      return new SentRow(
          Columns.unguard(cells.get(0)),
          Columns.unguard(cells.get(1)),
          Integer.parseInt(cells.get(2)),
          Optional.of(cells.get(3)).filter(t -> !t.isEmpty()).map(Integer::valueOf),
          Columns.unguard(cells.get(4)),
          replies.getOrDefault(messageId, new Reply(state, 0, "")),
          LocalDateTime.parse(cells.get(6)),
          messageId);
    } catch (RuntimeException e) {
      throw new IllegalArgumentException("not a row of what was sent", e);
    }
  }
}
