package gambrel.oracle;

import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whether far less of a body was packed than usually is, where bins are not weighed. */
final class UsualShare {
  private static final int LATEST = 20;
  private static final int ENOUGH = 5;

  private final World world;

  UsualShare(World world) {
    this.world = world;
  }

  /** Whether the body is below its usual share; never where bins are weighed. */
  boolean isBelow(Yield yield) {
    var share = share(yield);
    return !world.setup.bins().equals("weighed")
        && share != null
        && share.compareTo(least(yield)) < 0;
  }

  /** How many earlier bodies a body is compared with. */
  int others(Yield yield) {
    return before(yield).size();
  }

  /** Packs and tubs of batches, without offal and rail trim, of the boning weight; or null. */
  static BigFraction share(Yield yield) {
    var body = yield.body;
    if (body.beast.uncut() || body.boning == null || body.boning.signum() == 0) {
      return null;
    }
    var packed = body.products().stream().filter(r -> !r.is("bin")).toList();
    return body.cuts().isEmpty() ? null : BodyFigures.sum(packed).divide(body.boning);
  }

  private BigFraction least(Yield yield) {
    var shares = before(yield).stream().map(UsualShare::share).sorted().toList();
    if (shares.size() < ENOUGH) {
      return BigFraction.of(2, 5);
    }
    int half = shares.size() / 2;
    var median =
        shares.size() % 2 == 1
            ? shares.get(half)
            : shares.get(half - 1).add(shares.get(half)).divide(2);
    return median.multiply(3).divide(4);
  }

  private List<Yield> before(Yield yield) {
    var latest = yield.body.lastCut().minus(world.setup.cuttingDays());
    var all =
        world.yields.values().stream()
            .filter(y -> y.body.beast.species().equals(yield.body.beast.species()))
            .filter(y -> share(y) != null && !y.body.lastCut().isAfter(latest))
            .sorted(
                Comparator.comparing((Yield y) -> y.body.lastCut())
                    .thenComparing(y -> y.body.beast.id(), Split.byBytes()))
            .toList();
    return all.subList(Math.max(0, all.size() - LATEST), all.size());
  }
}
