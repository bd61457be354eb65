package gambrel.files.csv;

import java.util.ArrayList;
import java.util.List;

/** Takes one record apart into its cells (RFC 4180), one line of text at a time. */
final class RecordScanner {
  private enum State {
    CELL_START,
    PLAIN,
    QUOTED,
    CLOSED,
    WRONG
  }

  private final char delimiter;
  private final char quote;
  private final List<String> ended = new ArrayList<>();
  private final StringBuilder cell = new StringBuilder();
  private State state = State.CELL_START;

  /**
   * Starts a record.
   *
   * @param quote encloses cells; {@link TextForm#NO_QUOTE} if nothing does
   */
  RecordScanner(char delimiter, char quote) {
    this.delimiter = delimiter;
    this.quote = quote;
  }

  /** Reads a line; a further line of the same record begins with the line end before it. */
  void read(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (state != State.QUOTED) {
        readOutsideQuotes(c);
      } else if (c != quote) {
        cell.append(c);
      } else if (i + 1 < text.length() && text.charAt(i + 1) == quote) {
        cell.append(quote);
        i++;
      } else {
        state = State.CLOSED;
      }
    }
  }

  private void readOutsideQuotes(char c) {
    if (state == State.CLOSED && c != delimiter && !Character.isWhitespace(c)) {
      state = State.WRONG;
    } else if (state == State.CELL_START && c == quote && quote != TextForm.NO_QUOTE) {
      state = State.QUOTED;
    } else if (c == delimiter && state != State.WRONG) {
      ended.add(cell.toString());
      cell.setLength(0);
      state = State.CELL_START;
    } else if (state == State.CELL_START || state == State.PLAIN) {
      cell.append(c);
      state = State.PLAIN;
    }
  }

  /** Whether a quote is still open: the record goes on with the next line. */
  boolean isOpen() {
    return state == State.QUOTED;
  }

  /** Whether text follows a closing quote. */
  boolean isWrong() {
    return state == State.WRONG;
  }

  /** The number of cells so far. */
  int count() {
    return ended.size() + 1;
  }

  /** The cells so far, the last of which may go on. */
  List<String> cells() {
    var cells = new ArrayList<>(ended);
    cells.add(cell.toString());
    return cells;
  }
}
