package gambrel.month;

import gambrel.measure.Money;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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

  /** The weight that some per cent come to on all of {@code points}. */
  BigFraction weight(Collection<LossChart.Point> points, BigFraction percent) {
    return points.stream()
        .map(p -> loss.of(p.account().balance()).orElseThrow().whole().fraction())
        .reduce(BigFraction.ZERO, BigFraction::add)
        .multiply(percent)
        .divide(100);
  }

  /** The worth of some per cent by whose bodies they are; nobody where values are missing. */
  List<Evidence.Cost> of(Collection<LossChart.Point> points, BigFraction percent) {
    var costs = new ArrayList<Evidence.Cost>();
    for (var whose : Ownership.values()) {
      var theirs = points.stream().filter(p -> Ownership.of(p.account()) == whose).toList();
      if (!theirs.isEmpty()) {
        var species = theirs.get(0).account().body().species();
        records
            .rail()
            .of(species, weight(theirs, percent).abs())
            .ifPresent(money -> costs.add(new Evidence.Cost(whose, money)));
      }
    }
    return costs;
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
