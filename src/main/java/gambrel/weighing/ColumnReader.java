package gambrel.weighing;

import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Reads what a {@link ColumnWriter} wrote, in the same order. */
final class ColumnReader {
  private static final int LOW_BITS = 0x7f;
  private static final int BITS = 7;

  private byte[] bytes;
  private int at;

  ColumnReader(byte[] packed) {
    bytes = packed;
    var plain = new byte[(int) count()];
    var inflater = new Inflater(true);
    try {
      inflater.setInput(packed, at, packed.length - at);
      int end = 0;
      while (end < plain.length) {
        end += inflater.inflate(plain, end, plain.length - end);
      }
    } catch (DataFormatException e) {
      throw new IllegalStateException(e);
    } finally {
      inflater.end();
    }
    bytes = plain;
    at = 0;
  }

  /** How many there are of something. */
  long count() {
    long count = 0;
    int shift = 0;
    byte next;
    do {
      next = bytes[at++];
      count |= (long) (next & LOW_BITS) << shift;
      shift += BITS;
    } while (next < 0);
    return count;
  }

  /** A number of each. */
  long[] numbers(int size) {
    var numbers = new long[size];
    long before = 0;
    for (int i = 0; i < size; i++) {
      long change = count();
      before += change >>> 1 ^ -(change & 1);
      numbers[i] = before;
    }
    return numbers;
  }

  /** A text of each. */
  String[] texts(int size) {
    var texts = new String[size];
    for (int i = 0; i < size; i++) {
      var text = new char[(int) count()];
      for (int c = 0; c < text.length; c++) {
        text[c] = (char) count();
      }
      texts[i] = new String(text);
    }
    return texts;
  }
}
