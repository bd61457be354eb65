package gambrel.files.guess;

import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What a shop folder already names: cells that name it again tell what their column is. */
final class GuessKnown {
  private final Map<String, Predicate<String>> known;

  GuessKnown(Shop shop) {
    var bodies = new ArrayList<>(shop.bodies().keySet());
    shop.bodies().values().forEach(body -> bodies.addAll(body.tags()));
    known =
        Map.of(
            "body", finds(bodies),
            "scale", finds(shop.scales().keySet()),
            "customer", finds(shop.customers().keySet()),
            "batch", finds(shop.batches().keySet()),
            "code", text -> shop.codes().stream().anyMatch(code -> fits(code.pattern(), text)));
  }

  private static Predicate<String> finds(Collection<String> ids) {
    var index = new IdIndex(ids);
    return text -> index.find(text).isPresent();
  }

  private static boolean fits(String pattern, String text) {
    return pattern.endsWith("*")
        ? text.startsWith(pattern.substring(0, pattern.length() - 1))
        : text.equals(pattern);
  }

  /** How many of the values the shop's files name as such a column would hold them. */
  long count(String column, List<String> values) {
    return known.containsKey(column) ? values.stream().filter(known.get(column)).count() : 0;
  }
}
