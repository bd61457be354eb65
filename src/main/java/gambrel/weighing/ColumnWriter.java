package gambrel.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.zip.Deflater;

/**
 * Writes lists column by column. Of numbers it writes what they differ from the one before, in as few
 * bytes as that takes, since neighbours are mostly alike.
 */
final class ColumnWriter {
  private static final int LOW_BITS = 0x7f;
  private static final int MORE = 0x80;
  private static final int BITS = 7;

  /** Most of what a body's weighings deflate to. */
  private static final int ROOM = 4096;

  private byte[] bytes = new byte[ROOM];
  private int length;

  /** Writes how many there are of something. */
  void count(long count) {
    long rest = count;
    while ((rest & ~LOW_BITS) != 0) {
      put((int) (rest & LOW_BITS | MORE));
      rest >>>= BITS;
    }
    put((int) rest);
  }

  private void put(int one) {
    if (length == bytes.length) {
      bytes = Arrays.copyOf(bytes, 2 * length);
    }
    bytes[length++] = (byte) one;
  }

  /** Writes a number of each. */
  <T> void numbers(List<T> all, ToLongFunction<T> column) {
    long before = 0;
    for (var one : all) {
      long number = column.applyAsLong(one);
      long change = number - before;
      // The sign goes last, so that small negative changes are short too.
      count(change << 1 ^ change >> Long.SIZE - 1);
      before = number;
    }
  }

  /** Writes a text of each. */
  <T> void texts(List<T> all, Function<T, String> column) {
    for (var one : all) {
      String text = column.apply(one);
      count(text.length());
      for (int i = 0; i < text.length(); i++) {
        count(text.charAt(i));
      }
    }
  }

  /** All that was written: how long it is, then what it deflates to. */
  byte[] deflated() {
    var start = new ColumnWriter();
    start.count(length);
    var deflater = new Deflater(Deflater.BEST_SPEED, true);
    try {
      deflater.setInput(bytes, 0, length);
      deflater.finish();
      var packed = start.bytes;
      int end = start.length;
      while (!deflater.finished()) {
        if (end == packed.length) {
          packed = Arrays.copyOf(packed, 2 * end);
        }
        end += deflater.deflate(packed, end, packed.length - end);
      }
      return Arrays.copyOf(packed, end);
    } finally {
      deflater.end();
    }
  }
}
