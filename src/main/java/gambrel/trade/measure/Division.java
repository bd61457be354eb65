package gambrel.trade.measure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Division of a whole number of units among ids so that the parts add up to the whole: each part
 * rounded down, the rest by largest remainder, ties to the id that sorts first.
 */
public final class Division {
  private Division() {}

  /**
   * Divides {@code total} in proportion to {@code shares}; a negative total is divided by size and
   * negated.
   *
   * @param shares non-negative; where all are zero the parts are equal
   */
  public static SortedMap<String, Long> divide(long total, Map<String, BigFraction> shares) {
    if (total < 0) {
      var parts = divide(Math.negateExact(total), shares);
      parts.replaceAll((id, part) -> -part);
      return parts;
    }
    BigFraction whole = shares.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    if (whole.equals(BigFraction.ZERO)) {
      var equal = new TreeMap<>(shares);
      equal.replaceAll((id, share) -> BigFraction.ONE);
      return divide(total, equal);
    }
    var parts = new TreeMap<String, Long>(ByteOrder.IDS);
    var remainders = new ArrayList<Remainder>();
    long left = total;
    for (var share : ByteOrder.sorted(shares).entrySet()) {
      BigFraction exact = share.getValue().multiply(BigInteger.valueOf(total)).divide(whole);
      long part = exact.getNumerator().divide(exact.getDenominator()).longValueExact();
      parts.put(share.getKey(), part);
      remainders.add(new Remainder(share.getKey(), exact.subtract(BigFraction.of(part))));
      left -= part;
    }
    handOut(left, remainders, parts);
    return parts;
  }

  private static void handOut(long left, List<Remainder> remainders, Map<String, Long> parts) {
    remainders.sort(
        Comparator.comparing(Remainder::size)
            .reversed()
            .thenComparing(Remainder::id, ByteOrder.IDS));
    for (var remainder : remainders.subList(0, Math.toIntExact(left))) {
      parts.merge(remainder.id(), 1L, Long::sum);
    }
  }

  private record Remainder(String id, BigFraction size) {}
}
