package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Csv;
import gambrel.files.tables.SentTable;
import gambrel.files.tables.Table;
import gambrel.trade.register.Digest;
import gambrel.trade.sending.Reply;
import gambrel.trade.sending.SentBook;
import gambrel.trade.sending.SentState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;

/**
 * Keeps {@code data/sent.csv} in the output folder, and beside it a seal: the SHA-256 of the table
 * and why messages were refused. What was sent in a trial is kept in files of its own.
 */
final class SentStore {
  private static final String RESTORE =
      ", so nothing can be sent without the danger of sending it twice: restore the reports folder"
          + " from the backup";

  private final String path;
  private final String seal;

  SentStore(boolean trial) {
    path = trial ? "data/sent-trial.csv" : "data/sent.csv";
    seal = trial ? ".sent-trial" : ".sent";
  }

  /**
   * What was sent; an empty book if nothing was.
   *
   * @throws RefusedException if the table is missing, broken, or not as it was written
   */
  SentBook load(Changes output) throws IOException, RefusedException {
    var bytes = output.read(path);
    var sealed = output.read(seal);
    if (bytes.isEmpty() && sealed.isEmpty()) {
      return new SentBook(List.of());
    }
    if (bytes.isEmpty() || sealed.isEmpty()) {
      throw refused((bytes.isEmpty() ? path : seal) + " is missing");
    }
    try {
      var records = Csv.records(bytes.get());
      var kept = Csv.records(sealed.get());
      if (records.isEmpty() || !SentTable.fits(records.get(0))) {
        throw refused(path + " has a damaged first line");
      }
      var replies = new HashMap<String, Reply>();
      for (var line : kept.subList(1, kept.size())) {
        replies.put(
            line.get(0), new Reply(SentState.REFUSED, Integer.parseInt(line.get(1)), line.get(2)));
      }
      var book = SentTable.read(records.subList(1, records.size()), replies);
      if (!kept.get(0).equals(List.of(digest(book)))) {
        throw refused(path + " was changed, perhaps by a spreadsheet, since it was written");
      }
      return book;
    } catch (UncheckedIOException | IllegalArgumentException | IndexOutOfBoundsException e) {
      throw refused(path + " is broken");
    }
  }

  private static RefusedException refused(String why) {
    return new RefusedException(why + RESTORE);
  }

  private String digest(SentBook book) {
    return Digest.of(Csv.bytes(SentTable.of(path, book)));
  }

  /** Writes what was sent. */
  void write(Changes changes, SentBook book) throws IOException {
    var replies =
        book.rows().stream()
            .filter(row -> row.reply().state() == SentState.REFUSED)
            .map(r -> List.of(r.messageId(), "" + r.reply().code(), r.reply().words()))
            .distinct()
            .toList();
    changes.write(path, Csv.bytes(SentTable.of(path, book)));
    changes.write(seal, Csv.bytes(new Table(seal, List.of(digest(book)), replies::stream)));
  }
}
