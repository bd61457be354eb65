package gambrel.trade.rows;

import gambrel.trade.notice.Place;

/**
 * A row with what it is compared by.
 *
 * @param read the row
 * @param key what makes two rows the same weighing
 * @param content what they must agree in to be a repeat
 */
record KeyedRow(ReadRow read, String key, String content) {
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
