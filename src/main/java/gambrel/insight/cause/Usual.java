package gambrel.insight.cause;

import gambrel.insight.cause.Makeup.Product;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
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

  /** So many of the bodies that are cut the most alike are enough. */
  private static final int MOST_ALIKE = 8;

  /** Bodies are cut alike if they have two of three products in common. */
  private static final long LEAST_LIKENESS = 66;

  /** Spreads that are expected before a shop's own are known; from memory. */
  private static final long LOSS_SPREAD = 150_000;

  private static final long SHRINK_SPREAD = 5_000;
  private static final long BATCH_SPREAD = 8_000;

  /** A product's share differs by so much of itself, and of the weight into the boning room. */
  private static final long SPREAD_OF_SHARE = 10;

  /** Animals of one kind differ in fat far more than in bone and meat; from memory. */
  private static final long SPREAD_OF_FAT = 5;

  /** One pack or tub is a fifth heavier or lighter than another. */
  private static final long SPREAD_OF_WEIGHT = 5;

  private static final long SHARE_SPREAD = 2_000;
  private static final long BIN_SPREAD = 5_000;

  /** The night that has these bodies. */
  final Night night;

  final Settings settings;
  private final List<BodyBalance> balanced;
  private final Range ofAll;
  private final Map<Species, Range> loss = new EnumMap<>(Species.class);
  private final Map<Species, Optional<Range>> chill = new EnumMap<>(Species.class);
  private final Map<List<Object>, Habits> habits = new HashMap<>();
  private final Map<String, Makeup> makeups = new HashMap<>();
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
   * The usual weights of a product.
   *
   * @param share of the weight into the boning room, in millionths
   * @param each of one weighing, in hundred-thousandths of the shop's unit
   */
  record Habit(Range share, Range each) {}

  /**
   * What bodies usually give.
   *
   * @param byProduct empty if too few bodies are known
   * @param alike whether it is of bodies that are cut alike; else it is only the bone, fat and
   *     waste of all bodies of a species
   */
  record Habits(SortedMap<Product, Habit> byProduct, boolean alike) {
    /** How odd a share of a product is; 0 if nothing is known of it. */
    long strain(Product product, long share) {
      var usual = byProduct.get(product);
      return usual == null && !alike
          ? 0
          : (usual == null ? none(product) : usual.share()).strain(share, PRODUCT_KNEE);
    }

    /** The usual share of a product that none of the other bodies has. */
    private static Range none(Product product) {
      return new Range(0, product.step() == Step.BIN ? BIN_SPREAD : SHARE_SPREAD);
    }
  }

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
        species, s -> range(of(s).stream().flatMap(Usual::chillOf).toList(), SHRINK_SPREAD));
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
      batchLoss = Optional.of(range(values, BATCH_SPREAD).orElse(OF_A_BATCH));
    }
    return batchLoss.get();
  }

  /** The usual weight of one weighing of what a weighing is; empty if it is not known. */
  Optional<Range> each(Weighing weighing) {
    return Optional.ofNullable(night.bodies().get(weighing.body()))
        .map(BodyAccount::balance)
        .map(of -> habits(weighing.body()).byProduct().get(Product.of(of, weighing)))
        .map(Habit::each);
  }

  /** What bodies that are cut like this one usually give. */
  Habits habits(String body) {
    var of = night.bodies().get(body).balance();
    var makeup = makeup(of);
    return habits.computeIfAbsent(
        List.of(of.body().species(), makeup.products()),
        key -> habits(of(of.body().species()), makeup));
  }

  private Habits habits(List<BodyBalance> all, Makeup like) {
    var known = all.stream().filter(body -> body.boning().isPresent()).toList();
    var likeness = known.stream().map(body -> makeup(body).likeness(like)).toList();
    // Ties with the last of the most alike count too.
    long least =
        likeness.stream()
            .sorted(Comparator.reverseOrder())
            .limit(MOST_ALIKE)
            .reduce(LEAST_LIKENESS, (any, last) -> Math.max(last, LEAST_LIKENESS));
    var alike = known.stream().filter(body -> makeup(body).likeness(like) >= least).toList();
    boolean few = alike.size() < LEAST_BODIES_FOR_PRODUCTS;
    var bodies = few ? known : alike;
    var byProduct = new TreeMap<Product, Habit>();
    if (bodies.size() >= LEAST_BODIES_FOR_PRODUCTS) {
      bodies.stream()
          .flatMap(body -> makeup(body).products().stream())
          .filter(product -> !few || product.step() == Step.BIN)
          .forEach(product -> byProduct.computeIfAbsent(product, p -> habit(p, bodies)));
    }
    return new Habits(byProduct, !few);
  }

  private Habit habit(Product product, List<BodyBalance> bodies) {
    var shares =
        bodies.stream()
            .flatMap(b -> share(makeup(b).weight(product), b.boning().orElseThrow()).stream())
            .toList();
    var each = bodies.stream().flatMap(body -> makeup(body).each(product).stream()).toList();
    long part = product.item().equals(Kind.FAT.id()) ? SPREAD_OF_FAT : SPREAD_OF_SHARE;
    long expected = Math.max(Habits.none(product).spread(), median(shares) / part);
    return new Habit(Range.of(shares, expected), Range.of(each, median(each) / SPREAD_OF_WEIGHT));
  }

  private Makeup makeup(BodyBalance balance) {
    return makeups.computeIfAbsent(balance.body().id(), id -> Makeup.of(balance));
  }

  private Optional<Range> lossRange(List<BodyBalance> bodies) {
    return range(bodies.stream().flatMap(this::lossOfAllowed).toList(), LOSS_SPREAD);
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
    private static final int WORTH = 6;

    /**
     * The median, which a few odd values do not move, and a spread between that of the values and
     * the one to be expected before any is known.
     *
     * @param expected counts like so many values as {@link #WORTH}
     */
    static Range of(List<Long> values, long expected) {
      long middle = median(values);
      // The median deviation of a normal distribution is 0.6745 of its standard deviation.
      long deviation = median(values.stream().map(v -> Math.abs(v - middle)).toList()) * 3 / 2;
      int number = values.size();
      return new Range(
          middle, Math.max(1, (deviation * number + expected * WORTH) / (number + WORTH)));
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

  private static long median(List<Long> values) {
    var sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
