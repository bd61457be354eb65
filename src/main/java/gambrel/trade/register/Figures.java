package gambrel.trade.register;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The weights, counts and percentages of one customer's statement, by name. A statement is revised
 * when they change.
 *
 * @param values name to value, in the order of the page
 */
public record Figures(Map<String, String> values) {
  /** Copies the values. */
  public Figures {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /**
   * A figure that differs between two statements.
   *
   * @param name the figure
   * @param was its former value, or empty
   * @param now its value, or empty
   */
  public record Change(String name, String was, String now) {}

  /** What is different from {@code earlier}, in the order of the page, then what is gone. */
  public List<Change> changesSince(Figures earlier) {
    var changes = new ArrayList<Change>();
    values.forEach(
        (name, now) -> {
          String was = earlier.values.getOrDefault(name, "");
          if (!was.equals(now)) {
            changes.add(new Change(name, was, now));
          }
        });
    var gone = new TreeSet<>(earlier.values.keySet());
    gone.removeAll(values.keySet());
    gone.forEach(name -> changes.add(new Change(name, earlier.values.get(name), "")));
    return changes;
  }
}
