package gambrel.balance;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** The figures that were drawn from one subject. Safe for use by several threads. */
public final class Drawings {
  private static final int FEW = 8;

  private final Map<Drawn<?, ?>, Object> drawn = new ConcurrentHashMap<>(FEW);

  /** Not under the map's lock: one figure may be drawn from others. */
  <T> T of(Drawn<?, T> figure, Supplier<T> how) {
    var known = drawn.get(figure);
    if (known == null) {
      known = how.get();
      drawn.put(figure, known);
    }
    @SuppressWarnings("unchecked") // put in above, under the same figure
    var found = (T) known;
    return found;
  }
}
