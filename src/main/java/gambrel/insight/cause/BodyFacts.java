package gambrel.insight.cause;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Share;
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
  /** A body balances if its figures are within four spreads of the usual. */
  static final long BALANCED = Usual.Range.strainOf(4);

  /** From this strain of the chill shrink on, a settled body's rail weights are looked at. */
  private static final long ODD_SHRINK = Usual.Range.strainOf(4);

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
   */
  record Shift(long out, long into, long hot, long cold) {
    static final Shift NONE = new Shift(0, 0, 0, 0);

    Shift plus(Shift other) {
      return new Shift(out + other.out, into + other.into, hot + other.hot, cold + other.cold);
    }

    Shift times(long change) {
      return new Shift(out * change, into * change, hot * change, cold * change);
    }
  }

  /** By how much the sums rise if {@code change} is added to a weighing's net weight. */
  Shift shift(Weighing weighing, long change) {
    if (sums.isEmpty()) {
      count(balance.outOfBoning(), new Shift(1, 0, 0, 0));
      count(balance.boningWeighings(), new Shift(0, 1, 0, 0));
      count(balance.rail().hot().weighings(), new Shift(0, 0, 1, 0));
      count(balance.rail().cold().weighings(), new Shift(0, 0, 0, 1));
    }
    return sums.getOrDefault(weighing.place(), Shift.NONE).times(change);
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
    return balance.batches().stream()
        .filter(BatchBalance::isOut)
        .flatMap(batch -> batch.weighings().stream());
  }

  /** Its cutting loss, if it is known and tested. */
  Optional<Share> testedLoss() {
    return balance
        .shares()
        .cuttingLoss()
        .filter(loss -> usual.settings.bins() == Settings.Bins.WEIGHED)
        .filter(loss -> account.body().isCut());
  }

  /** The strain of its cutting loss and chill shrink together. */
  long strain() {
    return strain(Shift.NONE);
  }

  /** As above, with {@code shift} in its sums. */
  long strain(Shift shift) {
    return lossStrain(shift) + chillStrain(shift);
  }

  /** The strain of its cutting loss; 0 if the loss is not tested. */
  long lossStrain() {
    return lossStrain(Shift.NONE);
  }

  /** As above, with {@code shift} in its sums. */
  long lossStrain(Shift shift) {
    if (testedLoss().isEmpty()) {
      return 0;
    }
    var share = testedLoss().get();
    long boning = share.whole().hundredThousandths();
    long into = boning + shift.into();
    if (into <= 0) {
      return Usual.Range.MOST_STRAIN;
    }
    long loss = share.part().hundredThousandths() + shift.into() - shift.out();
    var limit = LossLimit.of(usual.settings, balance).multiply(BigFraction.of(into, boning));
    return Usual.millionths(BigFraction.of(loss, 100_000), limit)
        .map(usual.loss(species)::strain)
        .orElse(0L);
  }

  /** The strain of its chill shrink; 0 if it is not known. */
  long chillStrain() {
    return chillStrain(Shift.NONE);
  }

  private long chillStrain(Shift shift) {
    var range = usual.chill(species);
    var shrink = balance.shares().chillShrink();
    if (range.isEmpty() || shrink.isEmpty()) {
      return 0;
    }
    long lost = shrink.get().part().hundredThousandths() + shift.hot() - shift.cold();
    long hot = shrink.get().whole().hundredThousandths() + shift.hot();
    return Usual.millionths(BigFraction.of(lost), BigFraction.of(hot))
        .map(range.get()::strain)
        .orElse(0L);
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

  /** Whether a cause is looked for: it does not balance, or has an odd chill shrink. */
  boolean isSuspect() {
    var decision = account.decision();
    return isUnbalanced()
        || decision.state().isSettled()
            && decision.released().isEmpty()
            && (chillStrain() >= ODD_SHRINK || balance.isColdAboveHot());
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
