package gambrel.trade.measure;

import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Orders text by the bytes of its UTF-8 form. */
public final class ByteOrder {
  /** The order of ids wherever rows are sorted or a tie is broken. */
  public static final Comparator<String> IDS = ByteOrder::compare;

  private ByteOrder() {}

  /** Characters come in the order of their bytes, but for surrogates, which come last. */
  private static int compare(String one, String other) {
    int common = Math.min(one.length(), other.length());
    for (int i = 0; i < common; i++) {
      char a = one.charAt(i);
      char b = other.charAt(i);
      if (a != b) {
        boolean last = Character.isSurrogate(a);
        return last == Character.isSurrogate(b) ? a - b : last ? 1 : -1;
      }
    }
    return one.length() - other.length();
  }

  /** An unmodifiable copy of {@code map}, sorted by the bytes of its keys. */
  public static <V> SortedMap<String, V> sorted(Map<String, V> map) {
    var sorted = new TreeMap<String, V>(IDS);
    sorted.putAll(map);
    return Collections.unmodifiableSortedMap(sorted);
  }
}
