package gambrel.trade.shop;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * Finds the scale code that a text means: the code as written, else the longest beginning that
 * fits, else the only code that is equal without leading zeros.
 */
public final class CodeIndex {
  private static final String ANY = "*";

  private final List<String> beginnings;
  private final IdIndex whole;

  /** An index of codes and of beginnings of codes followed by {@code *}. */
  public CodeIndex(Collection<String> patterns) {
    beginnings =
        patterns.stream()
            .filter(pattern -> pattern.endsWith(ANY))
            .sorted(Comparator.comparing(String::length).reversed())
            .toList();
    var others = new HashSet<>(patterns);
    beginnings.forEach(others::remove);
    whole = new IdIndex(others);
  }

  /** An index of the codes of a shop. */
  public static CodeIndex of(Shop shop) {
    return new CodeIndex(shop.codes().stream().map(ScaleCode::pattern).toList());
  }

  /** The pattern of the code that a text means; empty if none fits. */
  public Optional<String> find(String text) {
    var found = whole.find(text);
    return found
        .filter(text::equals)
        .or(() -> beginnings.stream().filter(pattern -> fits(pattern, text)).findFirst())
        .or(() -> found);
  }

  private static boolean fits(String pattern, String text) {
    return text.startsWith(pattern.substring(0, pattern.length() - ANY.length()));
  }

  /** Whether a pattern is the beginning of codes. */
  public static boolean isBeginning(String pattern) {
    return pattern.endsWith(ANY);
  }
}
