package gambrel.trade.shop;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds an id as written, else the only id that is equal without leading zeros. */
public final class IdIndex {
  private static final Pattern NUMBER = Pattern.compile("(?i)\\d+([.,]\\d*)?E[+-]\\d+");

  private final Map<String, Set<String>> byIdWithoutZeros = new HashMap<>();

  /** An index of {@code ids}. */
  public IdIndex(Collection<String> ids) {
    ids.forEach(
        id -> byIdWithoutZeros.computeIfAbsent(withoutZeros(id), k -> new HashSet<>()).add(id));
  }

  /** The id that {@code text} means; empty if none fits, or several fit without zeros. */
  public Optional<String> find(String text) {
    var candidates = byIdWithoutZeros.getOrDefault(withoutZeros(text), Set.of());
    return candidates.contains(text)
        ? Optional.of(text)
        : candidates.stream().filter(id -> candidates.size() == 1).findFirst();
  }

  /** Whether a spreadsheet has turned an id into a number that no longer says which: 1.23E+14. */
  public static boolean isLost(String id) {
    // Most ids have no sign, and need no look at the pattern.
    return (id.indexOf('+') > 0 || id.indexOf('-') > 0) && NUMBER.matcher(id).matches();
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
