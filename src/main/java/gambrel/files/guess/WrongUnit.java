package gambrel.files.guess;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Share;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether all bodies look as if the exports of the rail or of the bench had a wrong unit. */
public final class WrongUnit {
  /** Kilograms in a thousand grams and in a pound (exactly 0.45359237), and the other way round. */
  private static final List<BigDecimal> FACTORS =
      Stream.of("1000", "2.2046", "0.4536", "0.001").map(BigDecimal::new).toList();

  private static final BigDecimal LEAST = new BigDecimal("85");
  private static final BigDecimal MOST = new BigDecimal("115");
  private static final int DECIMALS = 6;

  private WrongUnit() {}

  /** What is to be said; empty if some body was not cut, or is not off by such a factor. */
  public static Optional<String> hint(Collection<BodyBalance> bodies) {
    var out =
        bodies.stream()
            .flatMap(body -> body.shares().cuttingLoss().stream())
            .map(Share::rest)
            .map(rest -> rest.percent(DECIMALS))
            .toList();
    return FACTORS.stream()
        .filter(factor -> !out.isEmpty() && out.size() == bodies.size())
        .filter(factor -> out.stream().allMatch(percent -> isOff(percent, factor)))
        .findFirst()
        .map(
            factor ->
                "Look at the units first: each body went into the boning room with about "
                    + factor.toPlainString()
                    + " times the weight that came out. Is unit= right in each file of layouts/?");
  }

  private static boolean isOff(BigDecimal percent, BigDecimal factor) {
    var times = percent.multiply(factor);
    return times.compareTo(LEAST) > 0 && times.compareTo(MOST) < 0;
  }
}
