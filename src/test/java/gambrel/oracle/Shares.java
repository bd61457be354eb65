package gambrel.oracle;

import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Who owns how much of a body. */
final class Shares {
  private final SortedMap<String, BigFraction> shares = new TreeMap<>(Split.byBytes());

  Shares(Setup setup, Beast beast) {
    for (var line : setup.table("shares")) {
      if (line.get("body").equals(beast.id())) {
        shares.merge(line.get("customer"), parse(line.get("share")), BigFraction::add);
      }
    }
    if (shares.isEmpty()) {
      shares.put(beast.customer().isEmpty() ? "shop" : beast.customer(), BigFraction.ONE);
    }
  }

  /** Whether a cell is a share that can be read. */
  static boolean isShare(String cell) {
    return cell.matches("\\d+(\\.\\d+)?%?|\\d+\\s*(/|of)\\s*0*[1-9]\\d*");
  }

  private static BigFraction parse(String cell) {
    if (cell.endsWith("%")) {
      return Num.of(cell.substring(0, cell.length() - 1)).divide(Num.HUNDRED);
    }
    var parts = cell.split("\\s*(/|of)\\s*");
    return parts.length == 2 ? Num.of(parts[0]).divide(Num.of(parts[1])) : Num.of(cell);
  }

  SortedMap<String, BigFraction> all() {
    return shares;
  }

  boolean complete() {
    return shares.values().stream()
        .reduce(BigFraction.ZERO, BigFraction::add)
        .equals(BigFraction.ONE);
  }

  boolean onlyShop() {
    return shares.keySet().stream().allMatch("shop"::equals);
  }
}
