package gambrel.insight.cause;

import gambrel.trade.balance.BatchState;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Share;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** A body, the weighings in its sums, and how far its figures are from the usual. */
final class BodyFacts {
  final BodyAccount account;
  final BodyBalance balance;
  final String id;
  final Species species;
  private final Usual usual;
  private Sums sums;

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

  /** The places of the weighings in each sum of a body. */
  private record Sums(Set<Place> out, Set<Place> into, Set<Place> hot, Set<Place> cold) {
    private static Sums of(BodyBalance balance) {
      return new Sums(
          places(balance.outOfBoning()),
          places(balance.boningWeighings()),
          places(balance.rail().hot().weighings()),
          places(balance.rail().cold().weighings()));
    }

    private static Set<Place> places(Collection<Weighing> weighings) {
      return weighings.stream().map(Weighing::place).collect(Collectors.toSet());
    }
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
  }

  /** By how much the sums rise if {@code change} is added to a weighing's net weight. */
  Shift shift(Weighing weighing, long change) {
    if (sums == null) {
      sums = Sums.of(balance);
    }
    var place = weighing.place();
    return new Shift(
        sums.out().contains(place) ? change : 0,
        sums.into().contains(place) ? change : 0,
        sums.hot().contains(place) ? change : 0,
        sums.cold().contains(place) ? change : 0);
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
        .filter(batch -> batch.state() == BatchState.OUT)
        .flatMap(batch -> batch.weighings().stream());
  }

  /** Its cutting loss, if it is known and tested. */
  Optional<Share> testedLoss() {
    return balance
        .shares()
        .cuttingLoss()
        .filter(loss -> usual.settings().bins() == Settings.Bins.WEIGHED)
        .filter(loss -> account.body().outcome() == Outcome.CUT);
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
    return testedLoss().map(loss -> lossStrain(loss, shift)).orElse(0L);
  }

  private long lossStrain(Share share, Shift shift) {
    long boning = share.whole().hundredThousandths();
    long into = boning + shift.into();
    if (into <= 0) {
      return Usual.Range.MOST_STRAIN;
    }
    long loss = share.part().hundredThousandths() + shift.into() - shift.out();
    var limit = LossLimit.of(usual.settings(), balance).multiply(BigFraction.of(into, boning));
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
}
