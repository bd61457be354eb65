package gambrel.insight.cause;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BatchState;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** A body with what takes part in its balance, and how odd its figures are. */
final class BodyFacts {
  private final Settings settings;
  private final Usual usual;
  private final BodyAccount account;
  private Sums sums;

  BodyFacts(Settings settings, Usual usual, BodyAccount account) {
    this.settings = settings;
    this.usual = usual;
    this.account = account;
  }

  /** The weighings in each of its sums, by place. */
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
   * What a change does to the sums of a body, in hundred-thousandths.
   *
   * @param out what came off the block
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

  /** What it does to the sums if a weighing's net changes by so much. */
  Shift shift(Weighing weighing, long change) {
    if (sums == null) {
      sums = Sums.of(balance());
    }
    var place = weighing.place();
    return new Shift(
        sums.out().contains(place) ? change : 0,
        sums.into().contains(place) ? change : 0,
        sums.hot().contains(place) ? change : 0,
        sums.cold().contains(place) ? change : 0);
  }

  String id() {
    return account.body().id();
  }

  BodyAccount account() {
    return account;
  }

  BodyBalance balance() {
    return account.balance();
  }

  /** Its own weighings and those of its batches that are out of balance. */
  List<Weighing> weighings() {
    var all = new LinkedHashSet<>(balance().weighings().all());
    balance().batches().stream()
        .filter(batch -> batch.state() == BatchState.OUT)
        .map(BatchBalance::weighings)
        .forEach(all::addAll);
    return List.copyOf(all);
  }

  /** Whether its cutting loss is tested and known. */
  boolean isWeighedOut() {
    return settings.bins() == Settings.Bins.WEIGHED
        && account.body().outcome() == Outcome.CUT
        && balance().shares().cuttingLoss().isPresent();
  }

  /** How odd its figures are as they stand, see {@link UsualRange#strain}. */
  long strain() {
    return strain(Shift.NONE);
  }

  /** How odd its figures would be. */
  long strain(Shift shift) {
    return lossStrain(shift) + chillStrain(shift);
  }

  /** How odd its cutting loss is as it stands. */
  long lossStrain() {
    return lossStrain(Shift.NONE);
  }

  /** How odd its cutting loss would be. */
  long lossStrain(Shift shift) {
    if (!isWeighedOut()) {
      return 0;
    }
    var share = balance().shares().cuttingLoss().orElseThrow();
    long boning = share.whole().hundredThousandths();
    long into = boning + shift.into();
    if (into <= 0) {
      return UsualRange.MOST_SPREADS * UsualRange.MOST_SPREADS * UsualRange.ONE;
    }
    long loss = share.part().hundredThousandths() + shift.into() - shift.out();
    var limit = LossLimit.of(settings, balance()).multiply(BigFraction.of(into, boning));
    return Usual.millionths(BigFraction.of(loss, 100_000), limit)
        .map(usual.loss(account.body().species())::strain)
        .orElse(0L);
  }

  /** How odd its chill shrink is as it stands. */
  long chillStrain() {
    return chillStrain(Shift.NONE);
  }

  private long chillStrain(Shift shift) {
    var band = usual.chill(account.body().species());
    var shrink = balance().shares().chillShrink();
    if (band.isEmpty() || shrink.isEmpty()) {
      return 0;
    }
    long lost = shrink.get().part().hundredThousandths() + shift.hot() - shift.cold();
    long hot = shrink.get().whole().hundredThousandths() + shift.hot();
    return Usual.millionths(BigFraction.of(lost), BigFraction.of(hot))
        .map(band.get()::strain)
        .orElse(0L);
  }
}
