package gambrel.trade.measure;

import java.util.Comparator;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Orders text by the bytes of its UTF-8 form, which is the order of its code points. */
public final class ByteOrder {
  /** The order of ids wherever rows are sorted or a tie is broken. */
  public static final Comparator<String> IDS = ByteOrder::compare;

  private ByteOrder() {}

  /** A copy of {@code map}, sorted by the bytes of its keys. */
  public static <V> SortedMap<String, V> sorted(Map<String, V> map) {
    var sorted = new TreeMap<String, V>(IDS);
    sorted.putAll(map);
    return sorted;
  }

  private static int compare(String one, String other) {
    int shorter = Math.min(one.length(), other.length());
    for (int i = 0; i < shorter; i++) {
      char a = one.charAt(i);
      char b = other.charAt(i);
      if (a != b) {
        // Surrogates stand for code points above all others, though their own values do not.
        int byPlane = Boolean.compare(Character.isSurrogate(a), Character.isSurrogate(b));
        return byPlane != 0 ? byPlane : Character.compare(a, b);
      }
    }
    return Integer.compare(one.length(), other.length());
  }
}
