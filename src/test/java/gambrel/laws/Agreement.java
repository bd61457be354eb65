package gambrel.laws;

import gambrel.oracle.ExactNight;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Holds what places print against exact figures, and counts what it compared. */
final class Agreement {
  private static final Pattern NUMBER = Pattern.compile("[-\u2212]?[\\d,]*\\.?\\d+");

  private static final BigDecimal HALF = new BigDecimal("0.0005");
  private static final BigDecimal BESIDE = new BigDecimal("0.0015");

  private final List<String> differences = new ArrayList<>();
  private int figures;

  /** Every place whose figure is another one. */
  List<String> differences() {
    return differences;
  }

  /** How many figures were compared. */
  int figures() {
    return figures;
  }

  /**
   * A number as printed is the exact one, rounded half away from zero to the decimals that are
   * printed.
   *
   * @param printed blank, or {@code not known}, where the figure is not known
   * @param exact null where it is not known
   */
  void number(String place, String printed, BigFraction exact) {
    figures++;
    var found = NUMBER.matcher(printed);
    if (!found.find()) {
      check(exact == null, place, exact, printed);
      return;
    }
    if (exact == null) {
      check(false, place, null, printed);
      return;
    }
    var number = number(found.group());
    var rounded = ExactNight.round(exact, Math.max(0, number.scale()));
    check(rounded.compareTo(number) == 0, place, exact, printed);
  }

  /**
   * As {@link #number}, or a thousandth beside it: converted weights are rounded so that the parts
   * of a weight add up.
   */
  void part(String place, String printed, BigFraction exact) {
    part(place, printed, exact, 0);
  }

  /** As {@link #part} of so many converted weights, each rounded. */
  void part(String place, String printed, BigFraction exact, int weights) {
    var found = NUMBER.matcher(printed);
    if (exact != null && found.find()) {
      var off = number(found.group()).subtract(ExactNight.round(exact, 6)).abs();
      boolean whole =
          exact.equals(
              BigFraction.of(ExactNight.round(exact, 3).unscaledValue(), BigInteger.valueOf(1000)));
      var most = whole ? BESIDE : BESIDE.add(HALF.multiply(BigDecimal.valueOf(weights)));
      if (off.compareTo(most) <= 0) {
        figures++;
        return;
      }
    }
    number(place, printed, exact);
  }

  /** As {@link #number}, where a figure of nothing may be left out. */
  void numberOrBlank(String place, String printed, BigFraction exact) {
    boolean nothing = exact == null || exact.signum() == 0;
    if (printed.isEmpty() && nothing) {
      figures++;
    } else {
      number(place, printed, exact);
    }
  }

  /** A sum of printed numbers is the exact one but for the rounding of each of them. */
  void sum(String place, List<String> printed, BigFraction exact) {
    figures++;
    var sum = printed.stream().map(Agreement::number).reduce(BigDecimal.ZERO, BigDecimal::add);
    var off = sum.subtract(ExactNight.round(exact, 6)).abs();
    var most = HALF.multiply(BigDecimal.valueOf(printed.size()));
    check(off.compareTo(most) <= 0, place, exact, sum.toPlainString());
  }

  /** Two texts are the same. */
  void same(String place, Object expected, Object found) {
    figures++;
    if (!expected.equals(found)) {
      differences.add(place + ": expected " + expected + ", found " + found);
    }
  }

  private void check(boolean same, String place, BigFraction exact, String printed) {
    if (!same) {
      var expected = exact == null ? "nothing" : ExactNight.round(exact, 6).toPlainString();
      differences.add(place + ": expected " + expected + ", found " + printed);
    }
  }

  private static BigDecimal number(String printed) {
    return new BigDecimal(printed.replace(",", "").replace('\u2212', '-'));
  }
}
