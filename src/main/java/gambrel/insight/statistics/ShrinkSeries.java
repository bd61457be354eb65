package gambrel.insight.statistics;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Share;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Step;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The chill shrink of one species in order of kill, over all years of the shop's records.
 *
 * @param species the species
 * @param points one for every body that is killed and not cancelled
 * @param chart the chart of the points that have a chill shrink
 */
public record ShrinkSeries(Species species, List<Point> points, ControlChart chart) {
  /** By date of kill, then by first hot weighing, then by id. */
  public static final Comparator<BodyBalance> ORDER_OF_KILL =
      Comparator.comparing((BodyBalance b) -> b.body().killed().orElse(LocalDate.MAX))
          .thenComparing(ShrinkSeries::firstHot)
          .thenComparing(b -> b.body().id());

  /** Copies the points. */
  public ShrinkSeries {
    points = List.copyOf(points);
  }

  private static Instant firstHot(BodyBalance body) {
    return body.weighings().of(Step.HOT).stream()
        .findFirst()
        .map(hot -> hot.time().toInstant())
        .orElse(Instant.MAX);
  }

  /**
   * One body.
   *
   * @param balance its figures
   * @param signals codes of the chart's rules that it breaks; none without a chill shrink
   */
  public record Point(BodyBalance balance, List<String> signals) {}

  /** The series of every species that has bodies, by species id. */
  public static List<ShrinkSeries> of(Night night) {
    var bodies =
        night.bodies().values().stream()
            .map(account -> account.balance())
            .filter(body -> isKilled(body, night))
            .sorted(ORDER_OF_KILL)
            .collect(Collectors.groupingBy(body -> body.body().species()));
    return bodies.keySet().stream()
        .sorted(Comparator.comparing(Species::id))
        .map(species -> of(species, bodies.get(species)))
        .toList();
  }

  private static boolean isKilled(BodyBalance balance, Night night) {
    var today = night.asOf().toLocalDate();
    return balance.body().outcome() != Outcome.CANCELLED
        && balance.body().killed().filter(killed -> !killed.isAfter(today)).isPresent();
  }

  private static ShrinkSeries of(Species species, List<BodyBalance> bodies) {
    var values =
        bodies.stream()
            .flatMap(b -> b.shares().chillShrink().map(Share::percent).stream())
            .toList();
    var chart = ControlChart.of(values);
    var points = new ArrayList<Point>();
    int index = 0;
    for (var body : bodies) {
      boolean charted = body.shares().chillShrink().isPresent();
      points.add(new Point(body, charted ? chart.signals(index) : List.of()));
      index += charted ? 1 : 0;
    }
    return new ShrinkSeries(species, points, chart);
  }
}
