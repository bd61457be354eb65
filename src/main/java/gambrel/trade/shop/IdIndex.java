package gambrel.trade.shop;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds ids as they are written, else the one id that fits without leading zeros. */
public final class IdIndex {
  private final Set<String> ids = new HashSet<>();
  private final Map<String, Set<String>> withoutZeros = new HashMap<>();

  /** An index of {@code ids}. */
  public IdIndex(Collection<String> ids) {
    for (String id : ids) {
      this.ids.add(id);
      withoutZeros.computeIfAbsent(withoutZeros(id), k -> new HashSet<>()).add(id);
    }
  }

  /**
   * An id that was found.
   *
   * @param id as it is defined
   * @param exact whether it was written so
   */
  public record Match(String id, boolean exact) {}

  /** The id that {@code text} means. */
  public Optional<Match> find(String text) {
    if (ids.contains(text)) {
      return Optional.of(new Match(text, true));
    }
    var candidates = withoutZeros.getOrDefault(withoutZeros(text), Set.of());
    return candidates.size() == 1
        ? Optional.of(new Match(candidates.iterator().next(), false))
        : Optional.empty();
  }

  /** An id as a spreadsheet leaves it that takes it for a number. */
  public static String withoutZeros(String id) {
    int zeros = 0;
    while (zeros < id.length() - 1 && id.charAt(zeros) == '0') {
      zeros++;
    }
    return id.substring(zeros);
  }
}
