package gambrel.insight.cause;

import gambrel.insight.cause.Makeup.Product;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Settings;
import gambrel.trade.weighing.Weighing;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A body, the weighings in its sums, how far its figures are from the usual, and what of it does
 * not add up.
 */
final class BodyFacts {
  /** Up to so many spreads oddness of loss and shrink counts in full. */
  private static final int KNEE = 4;

  /** Bodies chill alike, so that an odd shrink is hardly ever natural. */
  private static final int CHILL_KNEE = 5;

  /** A body balances if its figures are within four spreads of the usual. */
  static final long BALANCED = 100L * KNEE * KNEE;

  private static final Set<ReasonCode> OF_RAIL =
      EnumSet.of(ReasonCode.RAIL_MISSING, ReasonCode.PARTS_MISSING, ReasonCode.ROW_SET_ASIDE);

  private static final Set<ReasonCode> OF_BALANCE =
      EnumSet.of(
          ReasonCode.RAIL_MISSING,
          ReasonCode.PARTS_MISSING,
          ReasonCode.LOSS_NEGATIVE,
          ReasonCode.LOSS_HIGH,
          ReasonCode.BATCH_OUT,
          ReasonCode.ROW_SET_ASIDE);

  /** Rows set aside for these notices can be read by a finder. */
  private static final Set<NoticeCode> READABLE =
      EnumSet.of(NoticeCode.PART_TWICE, NoticeCode.OVER_CAPACITY);

  final BodyAccount account;
  final BodyBalance balance;
  final String id;
  final Species species;
  private final Usual usual;
  private Makeup makeup;

  /** In which sums each weighing counts, once or not at all. */
  private final Map<Place, Shift> sums = new HashMap<>();

  /**
   * The facts of a body.
   *
   * @param usual what its figures are compared with
   */
  BodyFacts(Usual usual, BodyAccount account) {
    this.account = account;
    this.balance = account.balance();
    this.id = account.body().id();
    this.species = account.body().species();
    this.usual = usual;
  }

  /**
   * By how much a change raises the sums of a body, in hundred-thousandths.
   *
   * @param out what came out of the boning room
   * @param into the weight into the boning room
   * @param hot the hot weight
   * @param cold the cold weight
   * @param products what came out by product
   */
  record Shift(long out, long into, long hot, long cold, Map<Product, Long> products) {
    static final Shift NONE = new Shift(0, 0, 0, 0, Map.of());

    Shift plus(Shift other) {
      var sums = new HashMap<>(products);
      other.products.forEach((product, amount) -> sums.merge(product, amount, Long::sum));
      return new Shift(
          out + other.out, into + other.into, hot + other.hot, cold + other.cold, sums);
    }

    /** Out of the boning room came more of a product. */
    static Shift of(Product product, long more) {
      return new Shift(more, 0, 0, 0, Map.of(product, more));
    }

    private Shift times(long change) {
      return new Shift(out * change, into * change, hot * change, cold * change, Map.of());
    }
  }

  /** By how much the sums rise if {@code change} is added to a weighing's net weight. */
  Shift shift(Weighing weighing, long change) {
    if (sums.isEmpty()) {
      count(balance.outOfBoning(), new Shift(1, 0, 0, 0, Map.of()));
      count(balance.boningWeighings(), new Shift(0, 1, 0, 0, Map.of()));
      count(balance.rail().hot().weighings(), new Shift(0, 0, 1, 0, Map.of()));
      count(balance.rail().cold().weighings(), new Shift(0, 0, 0, 1, Map.of()));
    }
    var one = sums.getOrDefault(weighing.place(), Shift.NONE);
    return one.out() == 0 ? one.times(change) : Shift.of(Product.of(balance, weighing), change);
  }

  private void count(List<Weighing> weighings, Shift one) {
    weighings.forEach(weighing -> sums.merge(weighing.place(), one, Shift::plus));
  }

  /** Its own weighings, then those of its batches that are out of balance, each once. */
  List<Weighing> weighings() {
    return Stream.concat(balance.weighings().all().stream(), unbalancedBatchRows())
        .distinct()
        .toList();
  }

  /** The weighings of its batches that are out of balance. */
  Stream<Weighing> unbalancedBatchRows() {
    return unbalancedBatches().flatMap(batch -> batch.weighings().stream());
  }

  /** Its batches that are out of balance. */
  Stream<BatchBalance> unbalancedBatches() {
    return balance.batches().stream().filter(BatchBalance::isOut);
  }

  /** What came of it, by product. */
  Makeup makeup() {
    if (makeup == null) {
      makeup = Makeup.of(balance);
    }
    return makeup;
  }

  /** Its cutting loss, if it is known and tested. */
  Optional<Share> testedLoss() {
    return balance
        .shares()
        .cuttingLoss()
        .filter(loss -> usual.settings.bins() == Settings.Bins.WEIGHED)
        .filter(loss -> account.body().isCut());
  }

  /**
   * The weight that its tested cutting loss is above the usual with {@code shift} in its sums;
   * below zero if it is below, and zero if the loss is not tested.
   */
  Weight lossBeyondUsual(Shift shift) {
    long middle = usual.loss(species).middle();
    long more = lossOfAllowed(shift).orElse(middle) - middle;
    return Weight.of(
        LossLimit.of(usual.settings, balance).multiply(BigFraction.of(more, 1_000_000)));
  }

  /** The strain of its loss and shrink; what cannot be counts like a figure far from the usual. */
  long strain() {
    return strain(Shift.NONE) + BALANCED * faultCodes().stream().filter(OF_RAIL::contains).count();
  }

  /** The strain of its loss and shrink with {@code shift} in its sums. */
  long strain(Shift shift) {
    return lossStrain(shift) + chillStrain(shift);
  }

  /** The strain of its cutting loss with {@code shift} in its sums; 0 if it is not tested. */
  long lossStrain(Shift shift) {
    return testedLoss().isEmpty()
        ? 0
        : lossOfAllowed(shift)
            .map(loss -> usual.loss(species).strain(loss, KNEE))
            .orElse(2 * BALANCED);
  }

  /** How far its cutting loss is from the usual; empty if it is not tested. */
  Optional<Long> lossDistance() {
    return lossOfAllowed(Shift.NONE).map(usual.loss(species)::distance);
  }

  /** Its cutting loss in millionths of what the shop allows it; empty if it is not tested. */
  private Optional<Long> lossOfAllowed(Shift shift) {
    return testedLoss()
        .flatMap(
            share -> {
              long boning = share.whole().hundredThousandths();
              long into = boning + shift.into();
              long loss = share.part().hundredThousandths() + shift.into() - shift.out();
              var limit = LossLimit.of(usual.settings, balance);
              return Usual.millionths(
                  BigFraction.of(loss, 100_000), limit.multiply(BigFraction.of(into, boning)));
            });
  }

  /** The strain of its chill shrink with {@code shift} in its sums; 0 if it is not known. */
  long chillStrain(Shift shift) {
    return chillShrink(shift)
        .map(value -> usual.chill(species).strain(value, CHILL_KNEE))
        .orElse(0L);
  }

  /** How far its chill shrink is from the usual; empty if it is not known. */
  Optional<Long> chillDistance() {
    return chillShrink(Shift.NONE).map(usual.chill(species)::distance);
  }

  private Optional<Long> chillShrink(Shift shift) {
    return balance
        .shares()
        .chillShrink()
        .flatMap(
            shrink -> {
              long lost = shrink.part().hundredThousandths() + shift.hot() - shift.cold();
              long hot = shrink.whole().hundredThousandths() + shift.hot();
              return Usual.millionths(BigFraction.of(lost), BigFraction.of(hot));
            });
  }

  /**
   * How odd the weights of what came of it are; 0 if too few like it are known. What is lost by
   * nature is lost of all products alike, so that a loss above the usual makes none of them odd.
   */
  long productStrain() {
    return productStrain(Shift.NONE);
  }

  /** As above; 0 if it was not known {@code before} a change. */
  long productStrainBeside(BodyFacts before) {
    return before.balance.boning().isEmpty() ? 0 : productStrain();
  }

  /** As above, with {@code shift} in its sums. */
  long productStrain(Shift shift) {
    var habits = usual.habits(id);
    long beyond = Math.max(0, lossBeyondUsual(shift).hundredThousandths());
    long boning =
        balance.boning().map(Weight::hundredThousandths).orElse(0L) + shift.into() - beyond;
    if (boning <= 0 || balance.outputs().isEmpty()) {
      return 0;
    }
    return Stream.of(habits.byProduct().keySet(), makeup().products(), shift.products().keySet())
        .flatMap(Set::stream)
        .distinct()
        .mapToLong(
            product -> {
              long weight = makeup().weight(product) + shift.products().getOrDefault(product, 0L);
              return habits.strain(product, weight * 1_000_000 / boning);
            })
        .sum();
  }

  /** The reasons to hold that come from weighings that do not add up; none if it is not held. */
  Set<Reason> faults() {
    return account.decision().state() != State.HELD
        ? Set.of()
        : account.decision().reasons().stream()
            .filter(reason -> OF_BALANCE.contains(reason.code()))
            .collect(Collectors.toSet());
  }

  /** The codes of these reasons. */
  Set<ReasonCode> faultCodes() {
    return faults().stream().map(Reason::code).collect(Collectors.toSet());
  }

  /** Whether a weighing on the rail is missing, or one is set aside. */
  boolean lacksRail() {
    return faultCodes().stream().anyMatch(OF_RAIL::contains);
  }

  /** Whether a cause is looked for: it does not balance, or has an odd chill shrink. */
  boolean isSuspect() {
    var decision = account.decision();
    return isUnbalanced()
        || decision.state().isSettled()
            && decision.released().isEmpty()
            && (hasOddShrink() || balance.isColdAboveHot());
  }

  /** Whether its chill shrink is odd for its species and beside the bodies killed on its day. */
  private boolean hasOddShrink() {
    var usualShrink = usual.knownChill(species);
    if (usualShrink.isEmpty() || chillStrain(Shift.NONE) < BALANCED) {
      return false;
    }
    var range = usualShrink.get();
    long own = chillShrink(Shift.NONE).orElseThrow();
    var ofDay = usual.chillOfDay(balance);
    return ofDay.isEmpty()
        || new Usual.Range(Usual.Range.of(ofDay, 1).middle(), range.spread()).strain(own, KNEE)
            >= BALANCED;
  }

  /**
   * Whether it is held for its balance. A body with a row set aside that no finder can read does
   * not count: the row's weight is in no sum, so the row has to be mended first.
   */
  boolean isUnbalanced() {
    return !faults().isEmpty()
        && usual.night.ledger().setAside().stream()
            .filter(aside -> aside.effective() && aside.bodies().contains(id))
            .allMatch(aside -> READABLE.contains(aside.notice().code()));
  }
}
