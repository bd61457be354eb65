package gambrel.files.csv;

/**
 * Follows the quotes of one record (RFC 4180), to find whether the record ends with its line.
 * Commons CSV splits the record into cells.
 */
final class QuoteScanner {
  private final char delimiter;
  private final char quote;
  private State state = State.CELL_START;
  private int cells = 1;

  /**
   * Starts a record.
   *
   * @param quote encloses cells; {@link TextForm#NO_QUOTE} if nothing does
   */
  QuoteScanner(char delimiter, char quote) {
    this.delimiter = delimiter;
    this.quote = quote;
  }

  private enum State {
    CELL_START,
    PLAIN,
    QUOTED,
    CLOSED,
    WRONG
  }

  /** Reads one more line of the record. */
  void read(String line) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (state == State.QUOTED) {
        if (c == quote && i + 1 < line.length() && line.charAt(i + 1) == quote) {
          i++;
        } else if (c == quote) {
          state = State.CLOSED;
        }
      } else {
        state = outside(c);
      }
    }
  }

  private State outside(char c) {
    if (state == State.WRONG) {
      return State.WRONG;
    }
    if (c == delimiter) {
      cells++;
      return State.CELL_START;
    }
    return switch (state) {
      case CELL_START -> c == quote && quote != TextForm.NO_QUOTE ? State.QUOTED : State.PLAIN;
      case CLOSED -> Character.isWhitespace(c) ? State.CLOSED : State.WRONG;
      default -> state;
    };
  }

  /** Whether a quote is still open, so that the record goes on with the next line. */
  boolean isOpen() {
    return state == State.QUOTED;
  }

  /** Whether text follows a closing quote. */
  boolean isWrong() {
    return state == State.WRONG;
  }

  /** How many cells there are so far. */
  int cells() {
    return cells;
  }
}
