package gambrel.trade.measure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Groups and joins lists of values. */
public final class Groups {
  private Groups() {}

  /** The values of one list, then those of the other. */
  public static <V> List<V> both(List<V> one, List<V> other) {
    return Stream.concat(one.stream(), other.stream()).toList();
  }

  /** The groups in the order of their first values; each keeps the order of its values. */
  public static <K, V> Map<K, List<V>> inOrder(Stream<V> values, Function<V, K> key) {
    return values.collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
  }
}
