package gambrel.trade.notice;

import gambrel.trade.measure.ByteOrder;

/**
 * Where in the shop folder something stands.
 *
 * @param file path relative to the shop folder, with {@code /}; empty where no file is meant
 * @param line the line on which the record starts, from 1; 0 where no line is meant
 */
public record Place(String file, int line) implements Comparable<Place> {
  /** No place in particular. */
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
