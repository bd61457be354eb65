package gambrel.insight.cause;

import gambrel.insight.cause.Makeup.Product;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The usual losses and shares of this shop, from its bodies and batches that balance. */
final class Usual {
  /** What a body is made of differs for reasons of its own more often than what is lost. */
  static final int PRODUCT_KNEE = 3;

  private static final BigFraction MILLION = BigFraction.of(1_000_000);

  /** The usual loss where too few bodies are known: from nothing to what the shop allows. */
  private static final Range ALLOWED = new Range(500_000, 250_000);

  /** The usual chill shrink where too few bodies are known; from memory. */
  private static final Range CHILL = new Range(20_000, 10_000);

  /** The usual loss of a batch, of what went in, where too few batches are known. */
  private static final Range OF_A_BATCH = new Range(20_000, 15_000);

  private static final int LEAST_BODIES = 5;

  /** What a body is made of differs less than what is lost of it. */
  private static final int LEAST_BODIES_FOR_PRODUCTS = 3;

  private static final long LEAST_LOSS_SPREAD = 50_000;
  private static final long LEAST_SHRINK_SPREAD = 1_000;
  private static final long LEAST_BATCH_SPREAD = 5_000;

  /** Two weights rounded to a division differ by 0.41 of it (√2 / √12). */
  private static final long DIVISIONS_A_SPREAD = 2;

  /** A product's share differs by so much of itself, and of the weight into the boning room. */
  private static final long SPREAD_OF_SHARE = 20;

  private static final long LEAST_SHARE_SPREAD = 2_000;
  private static final long LEAST_BIN_SPREAD = 5_000;

  /** One pack or tub is a quarter heavier or lighter than another. */
  private static final long SPREAD_OF_WEIGHT = 4;

  /** Numbers of weighings differ by a third of one, in millionths; by more if few are known. */
  private static final long LEAST_COUNT_SPREAD = 350_000;

  private static final long COUNT_SPREAD_OF_FEW = 1_500_000;

  /** The night that has these bodies. */
  final Night night;

  final Settings settings;
  private final List<BodyBalance> balanced;
  private final Range ofAll;
  private final Map<Species, Range> loss = new EnumMap<>(Species.class);
  private final Map<Species, Optional<Range>> chill = new EnumMap<>(Species.class);
  private final Map<Species, SortedMap<Product, Habit>> habits = new EnumMap<>(Species.class);
  private Optional<Range> batchLoss = Optional.empty();

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

  /**
   * The usual amounts of a product.
   *
   * @param share its weight as a part of the weight into the boning room, in millionths
   * @param count its weighings, in millionths
   * @param each the weight of one weighing, in hundred-thousandths of the shop's unit
   */
  record Habit(Range share, Range count, Range each) {}

  /** Cutting loss as a part of what the shop allows that body. */
  Range loss(Species species) {
    return loss.computeIfAbsent(species, s -> lossRange(of(s)).orElse(ofAll));
  }

  /** Chill shrink as a part of the hot weight. */
  Range chill(Species species) {
    return knownChill(species).orElse(CHILL);
  }

  /** The same; empty if it is known of too few bodies. */
  Optional<Range> knownChill(Species species) {
    return chill.computeIfAbsent(
        species,
        s -> {
          var steps = of(s).stream().flatMap(this::chillStep).sorted().toList();
          long step = steps.isEmpty() ? 0 : steps.get(steps.size() / 2);
          return range(
              of(s).stream().flatMap(Usual::chillOf).toList(),
              Math.max(LEAST_SHRINK_SPREAD, step / DIVISIONS_A_SPREAD));
        });
  }

  /** A division of the rail scale as a part of the hot weight, in millionths. */
  private Stream<Long> chillStep(BodyBalance balance) {
    return balance.rail().hot().weighings().stream()
        .limit(1)
        .flatMap(
            weighing ->
                millionths(
                    weighing.scale().divisionIn(settings.unit()),
                    balance.hot().orElse(Weight.ZERO).fraction())
                    .stream());
  }

  /** Whether a body hung between its hot and cold weighings about as long as others mostly do. */
  boolean isChilledAsOthers(BodyBalance balance) {
    var hours =
        of(balance.body().species()).stream()
            .flatMap(other -> other.hoursChilled().stream())
            .sorted()
            .toList();
    return !hours.isEmpty()
        && balance
            .hoursChilled()
            .map(own -> own.divide(hours.get(hours.size() / 2)).multiply(4).intValue())
            .filter(quarters -> quarters == 3 || quarters == 4)
            .isPresent();
  }

  /** The chill shrink of the other bodies of the species that were killed on a body's day. */
  List<Long> chillOfDay(BodyBalance balance) {
    return of(balance.body().species()).stream()
        .filter(other -> !other.body().id().equals(balance.body().id()))
        .filter(other -> other.body().killed().equals(balance.body().killed()))
        .flatMap(Usual::chillOf)
        .toList();
  }

  /** Loss of a batch as a part of what went in. */
  Range batchLoss() {
    if (batchLoss.isEmpty()) {
      var values =
          night.batches().values().stream()
              .filter(batch -> batch.state() == BatchBalance.State.BALANCED)
              .flatMap(batch -> batch.lossShare().flatMap(Usual::millionths).stream())
              .toList();
      batchLoss = Optional.of(range(values, LEAST_BATCH_SPREAD).orElse(OF_A_BATCH));
    }
    return batchLoss.get();
  }

  /** What bodies of a species usually give; none if too few are known. */
  SortedMap<Product, Habit> habits(Species species) {
    return habits.computeIfAbsent(species, this::habitsOf);
  }

  private SortedMap<Product, Habit> habitsOf(Species species) {
    var bodies = of(species).stream().filter(body -> body.boning().isPresent()).toList();
    if (bodies.size() < LEAST_BODIES_FOR_PRODUCTS) {
      return new TreeMap<>();
    }
    var makeups = bodies.stream().map(Makeup::of).toList();
    return makeups.stream()
        .flatMap(makeup -> makeup.amounts().keySet().stream())
        .distinct()
        .collect(
            Collectors.toMap(
                product -> product,
                product -> habit(product, bodies, makeups),
                (one, same) -> one,
                TreeMap::new));
  }

  private static Habit habit(Product product, List<BodyBalance> bodies, List<Makeup> makeups) {
    var amounts = makeups.stream().map(makeup -> makeup.of(product)).toList();
    var shares =
        IntStream.range(0, bodies.size())
            .boxed()
            .flatMap(
                i -> share(amounts.get(i).weight(), bodies.get(i).boning().orElseThrow()).stream())
            .toList();
    var each =
        amounts.stream().filter(a -> a.count() > 0).map(a -> a.weight() / a.count()).toList();
    long usual = Range.of(each, 1).middle();
    return new Habit(
        shareRange(product, shares),
        Range.of(
            amounts.stream().map(a -> millions(a.count())).toList(),
            LEAST_COUNT_SPREAD + COUNT_SPREAD_OF_FEW / amounts.size()),
        Range.of(each, Math.max(1, usual / SPREAD_OF_WEIGHT)));
  }

  private static Range shareRange(Product product, List<Long> shares) {
    var range = Range.of(shares, leastSpread(product));
    return new Range(range.middle(), Math.max(range.spread(), range.middle() / SPREAD_OF_SHARE));
  }

  private static long leastSpread(Product product) {
    return product.step() == Step.BIN ? LEAST_BIN_SPREAD : LEAST_SHARE_SPREAD;
  }

  /** What is usual of a product that none of the other bodies has. */
  static Habit none(Product product) {
    return new Habit(
        new Range(0, leastSpread(product)), new Range(0, LEAST_COUNT_SPREAD), new Range(0, 1));
  }

  /** A number of weighings in millionths. */
  static long millions(long count) {
    return count * 1_000_000;
  }

  private Optional<Range> lossRange(List<BodyBalance> bodies) {
    return range(bodies.stream().flatMap(this::lossOfAllowed).toList(), LEAST_LOSS_SPREAD);
  }

  private List<BodyBalance> of(Species species) {
    return balanced.stream().filter(b -> b.body().species() == species).toList();
  }

  private static Optional<Range> range(List<Long> values, long leastSpread) {
    return values.size() < LEAST_BODIES
        ? Optional.empty()
        : Optional.of(Range.of(values, leastSpread));
  }

  private Stream<Long> lossOfAllowed(BodyBalance balance) {
    return balance
        .outputs()
        .flatMap(Outputs::cuttingLoss)
        .flatMap(lost -> millionths(lost.fraction(), LossLimit.of(settings, balance)))
        .stream();
  }

  private static Stream<Long> chillOf(BodyBalance balance) {
    return balance.shares().chillShrink().flatMap(Usual::millionths).stream();
  }

  private static Optional<Long> millionths(Share share) {
    return millionths(share.part().fraction(), share.whole().fraction());
  }

  /** A weight in hundred-thousandths as a part of another; empty if that is not above zero. */
  static Optional<Long> share(long weight, Weight of) {
    return millionths(BigFraction.of(weight), BigFraction.of(of.hundredThousandths()));
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
    /** Median and median deviation, which a few odd values do not move. */
    static Range of(List<Long> values, long leastSpread) {
      long middle = median(values);
      long deviation = median(values.stream().map(v -> Math.abs(v - middle)).toList());
      // The median deviation of a normal distribution is 0.6745 of its standard deviation. A few
      // values tell it badly: their spread is taken larger.
      long spread = deviation * 3 / 2;
      return new Range(middle, Math.max(leastSpread, spread + spread * 2 / values.size()));
    }

    private static long median(List<Long> values) {
      var sorted = values.stream().sorted().toList();
      int half = sorted.size() / 2;
      return sorted.size() % 2 == 1
          ? sorted.get(half)
          : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    /** How far a value is from the middle, in millionths. */
    long distance(long value) {
      return Math.abs(value - middle);
    }

    /**
     * How odd a value is: up to {@code knee} spreads the square of its distance in spreads, in
     * hundredths, which is minus twice the logarithm of its likelihood; beyond it grows by twice
     * the logarithm of the distance, since odd values have causes of their own.
     */
    long strain(long value, int knee) {
      long tenths = distance(value) * 10 / spread;
      return tenths <= knee * 10L
          ? tenths * tenths
          : 100L * knee * knee + Odds.of(tenths) - Odds.of(knee * 10L);
    }
  }
}
