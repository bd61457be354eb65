package gambrel.trade.notice;

import gambrel.trade.measure.ByteOrder;

/**
 * A place in the shop folder.
 *
 * @param file path relative to the shop folder, with {@code /}; empty if it is no file
 * @param line the first line of the record, from 1; 0 if it is no line
 */
public record Place(String file, int line) implements Comparable<Place> {
  /** No place. */
  public static final Place NONE = new Place("", 0);

  @Override
  public int compareTo(Place other) {
    int byFile = file.equals(other.file) ? 0 : ByteOrder.IDS.compare(file, other.file);
    return byFile != 0 ? byFile : Integer.compare(line, other.line);
  }

  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line;
  }
}
