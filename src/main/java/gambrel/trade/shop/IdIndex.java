package gambrel.trade.shop;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds an id as written, else the only id that is equal without leading zeros. */
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
   * @param id the id as the shop's file defines it
   * @param exact whether the text was equal to it
   */
  public record Match(String id, boolean exact) {}

  /** The id that {@code text} means; empty if none fits, or several fit without zeros. */
  public Optional<Match> find(String text) {
    if (ids.contains(text)) {
      return Optional.of(new Match(text, true));
    }
    var candidates = withoutZeros.getOrDefault(withoutZeros(text), Set.of());
    return candidates.size() == 1
        ? Optional.of(new Match(candidates.iterator().next(), false))
        : Optional.empty();
  }

  /** The id without leading zeros, as a spreadsheet writes it that reads it as a number. */
  public static String withoutZeros(String id) {
    int zeros = 0;
    while (zeros < id.length() - 1 && id.charAt(zeros) == '0') {
      zeros++;
    }
    return id.substring(zeros);
  }
}
