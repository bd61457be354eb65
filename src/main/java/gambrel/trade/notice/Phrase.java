package gambrel.trade.notice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A key of the notices files, with the values that its words name.
 *
 * @param key such as {@code CELL.BELOW_ZERO}
 * @param values by name, in the order in which they were given
 */
public record Phrase(String key, Map<String, Value> values) implements Value, NamedValues<Phrase> {
  /** Copies the values. */
  public Phrase {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** A phrase without values. */
  public static Phrase of(String key) {
    return new Phrase(key, Map.of());
  }

  @Override
  public Phrase with(String name, Value value) {
    var more = new LinkedHashMap<>(values);
    more.put(name, value);
    return new Phrase(key, more);
  }
}
