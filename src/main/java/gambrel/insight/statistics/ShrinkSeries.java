package gambrel.insight.statistics;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** The chill shrink of bodies in order of kill, over all years of the shop's records. */
public final class ShrinkSeries {
  /** By date of kill, then by first hot weighing, then by id. */
  public static final Comparator<BodyBalance> ORDER_OF_KILL =
      Comparator.comparing((BodyBalance b) -> b.body().killed().orElse(LocalDate.MAX))
          .thenComparing(ShrinkSeries::firstHot)
          .thenComparing(b -> b.body().id());

  private static final int DAYS = 31;
  private static final int MONTHS_BEFORE = 12;
  private static final int FEWEST = 8;

  private ShrinkSeries() {}

  private static Instant firstHot(BodyBalance body) {
    return body.weighings().of(Step.HOT).stream()
        .findFirst()
        .map(hot -> hot.time().toInstant())
        .orElse(Instant.MAX);
  }

  /**
   * One body.
   *
   * @param body its figures
   * @param chart the chart of its species; empty if its chill shrink is unknown
   * @param signals codes of the chart's rules that it breaks
   */
  public record Point(BodyBalance body, Optional<ControlChart> chart, List<String> signals) {}

  /** Every body that is killed and not cancelled, by species id, then in order of kill. */
  public static List<Point> of(Night night) {
    var killed =
        night.bodies().values().stream()
            .map(account -> account.balance())
            .filter(body -> isKilled(body, night))
            .sorted(ORDER_OF_KILL);
    return new TreeMap<>(Groups.inOrder(killed, body -> body.body().species().id()))
        .values().stream().flatMap(ofSpecies -> points(ofSpecies).stream()).toList();
  }

  private static boolean isKilled(BodyBalance balance, Night night) {
    var today = night.asOf().toLocalDate();
    return balance.body().outcome() != Outcome.CANCELLED
        && balance.body().killed().filter(killed -> !killed.isAfter(today)).isPresent();
  }

  private static List<Point> points(List<BodyBalance> ofSpecies) {
    var shrinks =
        ofSpecies.stream()
            .flatMap(body -> body.shares().chillShrink().stream())
            .map(Share::percent)
            .toList();
    var chart = ControlChart.of(shrinks, shrinks.size());
    var points = new ArrayList<Point>();
    int index = 0;
    for (var body : ofSpecies) {
      points.add(
          body.shares().chillShrink().isEmpty()
              ? new Point(body, Optional.empty(), List.of())
              : new Point(body, Optional.of(chart), chart.signals(index++)));
    }
    return points;
  }

  /**
   * A notice for each body of the last month whose chill shrink lies beyond the limits of its
   * species: those of the individuals chart of the bodies killed in the twelve months before. A
   * hook that was left in one of the rail weights is a common cause. A body whose cold weight is
   * above its hot one has a notice of its own.
   */
  public static List<Notice> unusual(Night night) {
    var recent = night.asOf().toLocalDate().minusDays(DAYS);
    var charted =
        of(night).stream()
            .map(Point::body)
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
