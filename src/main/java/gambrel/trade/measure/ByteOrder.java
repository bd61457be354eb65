package gambrel.trade.measure;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Orders text by the bytes of its UTF-8 form. */
public final class ByteOrder {
  /** The order of ids wherever rows are sorted or a tie is broken. */
  public static final Comparator<String> IDS =
      Comparator.comparing(id -> id.getBytes(StandardCharsets.UTF_8), Arrays::compareUnsigned);

  private ByteOrder() {}

  /** An unmodifiable copy of {@code map}, sorted by the bytes of its keys. */
  public static <V> SortedMap<String, V> sorted(Map<String, V> map) {
    var sorted = new TreeMap<String, V>(IDS);
    sorted.putAll(map);
    return Collections.unmodifiableSortedMap(sorted);
  }
}
