package gambrel.insight.statistics;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds bodies of the last month whose chill shrink lies beyond the limits of their species: those
 * of the individuals chart of the bodies killed in the twelve months before. A hook that was left
 * in one of the rail weights is a common cause.
 */
public final class UnusualChill {
  private static final int DAYS = 31;
  private static final int MONTHS_BEFORE = 12;
  private static final int FEWEST = 8;

  private UnusualChill() {}

  /**
   * A notice for each such body. A body whose cold weight is above its hot one has a notice of its
   * own.
   */
  public static List<Notice> notices(Night night) {
    var recent = night.asOf().toLocalDate().minusDays(DAYS);
    var charted =
        ShrinkSeries.of(night).stream()
            .map(ShrinkSeries.Point::body)
            .filter(body -> body.shares().chillShrink().isPresent())
            .toList();
    return charted.stream()
        .filter(body -> !killed(body).isBefore(recent))
        .flatMap(body -> notice(body, charted).stream())
        .toList();
  }

  private static LocalDate killed(BodyBalance balance) {
    return balance.body().killed().orElseThrow();
  }

  private static Optional<Notice> notice(BodyBalance body, List<BodyBalance> charted) {
    var shrink = body.shares().chillShrink().orElseThrow();
    var percents = new ArrayList<BigFraction>();
    charted.stream()
        .filter(other -> other.body().species() == body.body().species())
        .filter(other -> killed(other).isBefore(killed(body)))
        .filter(other -> !killed(other).isBefore(killed(body).minusMonths(MONTHS_BEFORE)))
        .forEach(other -> percents.add(other.shares().chillShrink().get().percent()));
    int before = percents.size();
    percents.add(shrink.percent());
    var chart = ControlChart.of(percents, before);
    boolean isUnusual =
        before >= FEWEST
            && shrink.part().compareTo(Weight.ZERO) >= 0
            && chart.signals(before).contains(ControlChart.BEYOND_LIMITS);
    return isUnusual
        ? Optional.of(
            Notice.of(NoticeCode.CHILL_UNUSUAL)
                .aboutBody(body.body().id())
                .with("found", new Value.Percent(shrink.percent()))
                .with("lower", percent(chart.lower()))
                .with("upper", percent(chart.upper()))
                .with("count", before))
        : Optional.empty();
  }

  private static Value percent(Optional<BigDecimal> limit) {
    return new Value.Percent(Exact.fraction(limit.orElseThrow()));
  }
}
