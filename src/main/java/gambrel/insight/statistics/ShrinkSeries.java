package gambrel.insight.statistics;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Share;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Step;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** The chill shrink of bodies in order of kill, over all years of the shop's records. */
public final class ShrinkSeries {
  /** By date of kill, then by first hot weighing, then by id. */
  public static final Comparator<BodyBalance> ORDER_OF_KILL =
      Comparator.comparing((BodyBalance b) -> b.body().killed().orElse(LocalDate.MAX))
          .thenComparing(ShrinkSeries::firstHot)
          .thenComparing(b -> b.body().id());

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
}
