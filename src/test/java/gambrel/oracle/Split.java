package gambrel.oracle;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact division by largest remainder. */
final class Split {
  private Split() {}

  /** Whole steps for each id; they add up to {@code total}. Weights must not add up to nothing. */
  static SortedMap<String, BigInteger> of(
      BigInteger total, SortedMap<String, BigFraction> weights) {
    var sum = weights.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    var parts = new TreeMap<String, BigInteger>();
    var remainders = new TreeMap<String, BigFraction>();
    var left = total.abs();
    for (var entry : weights.entrySet()) {
      var exact = entry.getValue().multiply(total.abs()).divide(sum);
      var whole = exact.getNumerator().divide(exact.getDenominator());
      parts.put(entry.getKey(), whole);
      remainders.put(entry.getKey(), exact.subtract(whole));
      left = left.subtract(whole);
    }
    // The sort is stable, so among equal remainders the id that sorts first comes first.
    var order = new ArrayList<>(remainders.entrySet());
    order.sort((a, b) -> b.getValue().compareTo(a.getValue()));
    for (int i = 0; i < left.intValueExact(); i++) {
      parts.merge(order.get(i).getKey(), BigInteger.ONE, BigInteger::add);
    }
    if (total.signum() < 0) {
      parts.replaceAll((id, part) -> part.negate());
    }
    return parts;
  }

  /** Ids sort by their bytes. */
  static Comparator<String> byBytes() {
    return (a, b) ->
        Arrays.compareUnsigned(
            a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
  }
}
