package gambrel.insight.cause;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Settings;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** The usual losses and shares of this shop, from its bodies that balance. */
final class Usual {
  private static final BigFraction MILLION = BigFraction.of(1_000_000);

  /** The usual loss where too few bodies are known: from nothing to what the shop allows. */
  private static final Range ALLOWED = new Range(500_000, 250_000);

  private static final int LEAST_BODIES = 5;

  /** What a body is made of differs less than what is lost of it. */
  private static final int LEAST_BODIES_FOR_A_SHARE = 3;

  private static final long LEAST_LOSS_SPREAD = 50_000;
  private static final long LEAST_SHRINK_SPREAD = 2_000;
  private static final long LEAST_SHARE_SPREAD = 5_000;

  /** The night that has these bodies. */
  final Night night;

  final Settings settings;
  private final List<BodyBalance> balanced;
  private final Range ofAll;
  private final Map<Species, Range> loss = new EnumMap<>(Species.class);
  private final Map<Species, Optional<Range>> chill = new EnumMap<>(Species.class);

  Usual(Night night) {
    this.night = night;
    settings = night.shop().settings();
    balanced =
        night.bodies().values().stream()
            .filter(a -> a.decision().state().isSettled() && a.decision().released().isEmpty())
            .map(BodyAccount::balance)
            .filter(balance -> balance.body().isCut())
            .toList();
    ofAll = lossRange(balanced).orElse(ALLOWED);
  }

  /** Cutting loss as a part of what the shop allows that body. */
  Range loss(Species species) {
    return loss.computeIfAbsent(species, s -> lossRange(of(s)).orElse(ofAll));
  }

  /** Chill shrink as a part of the hot weight; empty if it is known of too few bodies. */
  Optional<Range> chill(Species species) {
    return chill.computeIfAbsent(
        species, s -> range(of(s), Usual::chillOf, LEAST_SHRINK_SPREAD, LEAST_BODIES));
  }

  /**
   * What is in bins of one kind as a part of the weight into the boning room; empty if it is known
   * of too few bodies.
   */
  Optional<Range> bin(Species species, Kind kind) {
    return range(of(species), b -> binned(b, kind), LEAST_SHARE_SPREAD, LEAST_BODIES_FOR_A_SHARE);
  }

  private Optional<Range> lossRange(List<BodyBalance> bodies) {
    return range(bodies, this::lossOfAllowed, LEAST_LOSS_SPREAD, LEAST_BODIES);
  }

  private List<BodyBalance> of(Species species) {
    return balanced.stream().filter(b -> b.body().species() == species).toList();
  }

  private static Optional<Range> range(
      List<BodyBalance> bodies,
      Function<BodyBalance, Optional<Long>> figure,
      long leastSpread,
      int leastBodies) {
    var values = bodies.stream().flatMap(b -> figure.apply(b).stream()).toList();
    return values.size() < leastBodies
        ? Optional.empty()
        : Optional.of(Range.of(values, leastSpread));
  }

  private Optional<Long> lossOfAllowed(BodyBalance balance) {
    return balance
        .outputs()
        .flatMap(Outputs::cuttingLoss)
        .flatMap(lost -> millionths(lost.fraction(), LossLimit.of(settings, balance)));
  }

  private static Optional<Long> chillOf(BodyBalance balance) {
    return balance.shares().chillShrink().flatMap(Usual::millionths);
  }

  /** What is in bins of one kind, in millionths of the weight into the boning room. */
  static Optional<Long> binned(BodyBalance balance, Kind kind) {
    var share =
        switch (kind) {
          case BONE -> balance.shares().boneOfBoning();
          case FAT -> balance.shares().fatOfBoning();
          default -> Share.of(balance.outputs().flatMap(Outputs::waste), balance.boning());
        };
    return share.flatMap(Usual::millionths);
  }

  private static Optional<Long> millionths(Share share) {
    return millionths(share.part().fraction(), share.whole().fraction());
  }

  /** {@code part} in millionths of {@code whole}; empty if the whole is not above zero. */
  static Optional<Long> millionths(BigFraction part, BigFraction whole) {
    return whole.signum() <= 0
        ? Optional.empty()
        : Optional.of(Exact.units(part.divide(whole).multiply(MILLION), 0));
  }

  /**
   * The usual values of a figure in this shop.
   *
   * @param middle the median, in millionths
   * @param spread about one standard deviation, in millionths, above zero
   */
  record Range(long middle, long spread) {
    private static final long MOST_SPREADS = 10;

    /** The strain of a value ten or more spreads from the middle. */
    static final long MOST_STRAIN = strainOf(MOST_SPREADS);

    /** The strain of a value so many spreads from the middle. */
    static long strainOf(long spreads) {
      return 100 * spreads * spreads;
    }

    /** Median and median deviation, which a few odd values do not move. */
    static Range of(List<Long> values, long leastSpread) {
      long middle = median(values);
      long deviation = median(values.stream().map(v -> Math.abs(v - middle)).toList());
      // The median deviation of a normal distribution is 0.6745 of its standard deviation.
      return new Range(middle, Math.max(leastSpread, deviation * 3 / 2));
    }

    private static long median(List<Long> values) {
      var sorted = values.stream().sorted().toList();
      int half = sorted.size() / 2;
      return sorted.size() % 2 == 1
          ? sorted.get(half)
          : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    /** How odd a value is: the square of its distance in spreads, in hundredths. */
    long strain(long value) {
      long distance = Math.abs(value - middle);
      if (distance >= MOST_SPREADS * spread) {
        return MOST_STRAIN;
      }
      long tenths = distance * 10 / spread;
      return tenths * tenths;
    }
  }
}
