package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much of W bodies usually give in packs and tubs, where the shop does not weigh all bins. A
 * body far below the last bodies of its species is probably not cut to the end.
 */
public final class UsualShares {
  private static final int MOST = 20;
  private static final int FEWEST = 5;
  private static final BigFraction OF_USUAL = BigFraction.of(3, 4);
  private static final BigFraction WITHOUT_USUAL = BigFraction.of(2, 5);

  private final Settings settings;
  private final Map<Species, NavigableSet<Cut>> bySpecies = new EnumMap<>(Species.class);

  /** The shares of {@code balances}; bodies without W and bodies that are not cut do not count. */
  public UsualShares(Settings settings, Collection<BodyBalance> balances) {
    this.settings = settings;
    balances.forEach(
        balance ->
            tested(balance)
                .ifPresent(
                    share ->
                        bySpecies
                            .computeIfAbsent(balance.body().species(), s -> new TreeSet<>())
                            .add(new Cut(lastCut(balance), balance.body().id(), share.ratio()))));
  }

  /** A body's share; ordered by last cut, then body. */
  private record Cut(Instant last, String body, BigFraction share) implements Comparable<Cut> {
    private static final Comparator<Cut> ORDER =
        Comparator.comparing(Cut::last).thenComparing(Cut::body, ByteOrder.IDS);

    @Override
    public int compareTo(Cut other) {
      return ORDER.compare(this, other);
    }
  }

  private static Instant lastCut(BodyBalance balance) {
    return balance.lastCut().orElseThrow().toInstant();
  }

  private Optional<Share> tested(BodyBalance balance) {
    return settings.bins() == Settings.Bins.WEIGHED
            || balance.body().outcome() != Outcome.CUT
            || balance.lastCut().isEmpty()
        ? Optional.empty()
        : balance.packedOfBoning();
  }

  /** The reason to hold a body that is below its usual share; empty if it is not, or not tested. */
  Optional<Reason> fault(BodyBalance balance) {
    return tested(balance)
        .flatMap(
            share -> {
              var least = least(balance);
              return share.ratio().compareTo(least) >= 0
                  ? Optional.empty()
                  : Optional.of(
                      new Reason(ReasonCode.HOME_LOW, "")
                          .with("home", share.part(), settings.unit())
                          .with("boning", share.whole(), settings.unit())
                          .with("share", new Value.Percent(share.percent()))
                          .with("least", new Value.Percent(least.multiply(Exact.HUNDRED))));
            });
  }

  /** The least share: of the median of the bodies cut to the end before, if they are enough. */
  private BigFraction least(BodyBalance balance) {
    var end = lastCut(balance).minus(Duration.ofDays(settings.cuttingDays())).plusNanos(1);
    var before =
        bySpecies.get(balance.body().species()).headSet(new Cut(end, "", BigFraction.ZERO), false);
    var shares = before.descendingSet().stream().limit(MOST).map(Cut::share).sorted().toList();
    int middle = shares.size() / 2;
    if (shares.size() < FEWEST) {
      return WITHOUT_USUAL;
    }
    var median =
        shares.size() % 2 == 1
            ? shares.get(middle)
            : shares.get(middle - 1).add(shares.get(middle)).divide(2);
    return median.multiply(OF_USUAL);
  }
}
