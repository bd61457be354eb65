package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Settings;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much of W bodies usually give in packs and tubs, where the shop does not weigh all bins. A
 * body far below the last bodies of its species is probably not cut to the end.
 */
public final class UsualShares {
  private static final int MOST = 20;
  private static final int FEWEST = 5;
  private static final BigFraction OF_MEDIAN = BigFraction.of(3, 4);
  private static final BigFraction WITHOUT_MEDIAN = BigFraction.of(2, 5);

  private final Settings settings;
  private final Map<Species, List<BodyBalance>> latest;

  /** The shares of {@code balances}; bodies without W and bodies that are not cut do not count. */
  public UsualShares(Settings settings, Collection<BodyBalance> balances) {
    this.settings = settings;
    latest =
        balances.stream()
            .filter(balance -> tested(balance).isPresent())
            .sorted(BodyBalance.LATEST_CUT_FIRST)
            .collect(Collectors.groupingBy(balance -> balance.body().species()));
  }

  private static OffsetDateTime lastCut(BodyBalance balance) {
    return balance.lastCut().orElseThrow();
  }

  private Optional<Share> tested(BodyBalance balance) {
    return balance
        .packedOfBoning()
        .filter(share -> settings.bins() != Settings.Bins.WEIGHED)
        .filter(share -> balance.body().isCut() && balance.lastCut().isPresent());
  }

  /** The reason to hold a body that is below its usual share; empty if it is not, or not tested. */
  Optional<Reason> fault(BodyBalance balance) {
    return tested(balance).flatMap(share -> fault(share, median(balance)));
  }

  private Optional<Reason> fault(Share share, Optional<BigFraction> median) {
    var least = median.map(OF_MEDIAN::multiply).orElse(WITHOUT_MEDIAN.multiply(Exact.HUNDRED));
    if (share.percent().compareTo(least) >= 0) {
      return Optional.empty();
    }
    var reason =
        new Reason(ReasonCode.HOME_LOW, "")
            .with("home", share.part(), settings.unit())
            .with("boning", share.whole(), settings.unit())
            .with("share", new Value.Percent(share.percent()))
            .with("least", new Value.Percent(least));
    return Optional.of(
        median.map(m -> reason.with(Reason.REST, rest(share, m), settings.unit())).orElse(reason));
  }

  private static Weight rest(Share share, BigFraction median) {
    var usual = share.whole().fraction().multiply(median).divide(Exact.HUNDRED);
    return Weight.of(usual).minus(share.part());
  }

  /** The median share of the bodies cut before, in per cent; empty if they are too few. */
  private Optional<BigFraction> median(BodyBalance balance) {
    var end = lastCut(balance).minusHours(24L * settings.cuttingDays());
    var shares =
        latest.get(balance.body().species()).stream()
            .filter(other -> !lastCut(other).isAfter(end))
            .limit(MOST)
            .map(other -> tested(other).orElseThrow().percent())
            .sorted()
            .toList();
    if (shares.size() < FEWEST) {
      return Optional.empty();
    }
    int middle = shares.size() / 2;
    return Optional.of(shares.get(middle).add(shares.get((shares.size() - 1) / 2)).divide(2));
  }
}
