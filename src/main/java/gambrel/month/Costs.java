package gambrel.month;

import gambrel.measure.Money;
import gambrel.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a change of a loss comes to, for customers and for the shop apart: a customer's kilo and the
 * shop's are never added.
 */
public final class Costs {
  private final MonthRecords records;
  private final Loss loss;

  Costs(MonthRecords records, Loss loss) {
    this.records = records;
    this.loss = loss;
  }

  /** The weight, without its sign, that some per cent come to for each who bears it. */
  Evidence.Borne borne(Collection<LossChart.Point> points, BigFraction percent) {
    var weights = new EnumMap<Ownership, Weight>(Ownership.class);
    byOwner(points)
        .forEach(
            (whose, theirs) -> weights.put(whose, Weight.of(weight(theirs, percent).abs())));
    return new Evidence.Borne(weights);
  }

  private static Map<Ownership, List<LossChart.Point>> byOwner(
      Collection<LossChart.Point> points) {
    return points.stream()
        .collect(
            Collectors.groupingBy(
                p -> Ownership.of(p.account()),
                () -> new EnumMap<>(Ownership.class),
                Collectors.toList()));
  }

  private BigFraction weight(Collection<LossChart.Point> points, BigFraction percent) {
    return points.stream()
        .map(p -> loss.of(p.account().balance()).orElseThrow().whole().fraction())
        .reduce(BigFraction.ZERO, BigFraction::add)
        .multiply(percent)
        .divide(100);
  }

  /** The worth of some per cent by whose bodies they are; nobody where values are missing. */
  List<Evidence.Cost> of(Collection<LossChart.Point> points, BigFraction percent) {
    var costs = new ArrayList<Evidence.Cost>();
    byOwner(points)
        .forEach(
            (whose, theirs) ->
                records
                    .rail()
                    .of(theirs.get(0).account().body().species(), weight(theirs, percent).abs())
                    .ifPresent(money -> costs.add(new Evidence.Cost(whose, money))));
    return costs;
  }

  /** Money that is the shop's alone. */
  public static List<Evidence.Cost> ofShop(Money money) {
    return List.of(new Evidence.Cost(Ownership.OWN, money));
  }

  /** By which findings are put in order: the most that anybody loses. */
  public static Optional<Money> most(List<Evidence.Cost> costs) {
    return costs.stream().map(Evidence.Cost::value).max(Comparator.naturalOrder());
  }

  /** A finding with its evidence and what it comes to. */
  public static Finding finding(
      FindingKind kind,
      String variant,
      List<String> subjects,
      List<Evidence> evidence,
      List<Evidence.Cost> costs,
      Sureness sureness) {
    var all = new ArrayList<>(evidence);
    all.addAll(costs);
    return new Finding(kind, variant, subjects, all, most(costs), sureness);
  }
}
