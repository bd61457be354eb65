package gambrel.insight.month.money;

import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The shop's own bodies of one species from one supplier.
 *
 * @param species the species
 * @param supplier as {@code bodies.csv} names it; empty if it does not
 * @param bodies how many bodies
 * @param takeHome take-home of cold weight, in per cent
 * @param counted how many of the bodies have a value
 * @param cost cost of the bodies that have a value
 * @param value value of these bodies
 * @param marginAUnit minor units of margin for a unit of cold weight, of all bodies together
 * @param toOthers margin for a unit of cold weight, less that of other suppliers' bodies of the
 *     same class, cut the same way; empty where there are too few
 */
public record SupplierLine(
    Species species,
    String supplier,
    int bodies,
    Optional<Spread> takeHome,
    int counted,
    Money cost,
    Money value,
    Optional<BigFraction> marginAUnit,
    Optional<Difference> toOthers) {

  /** Value less cost of the bodies that have a value. */
  public Money margin() {
    return value.minus(cost);
  }

  /** The lines of some bodies, by species, then by supplier. */
  public static List<SupplierLine> of(Collection<OwnStock> stock) {
    var lines = new ArrayList<SupplierLine>();
    for (var species : Species.values()) {
      var own = stock.stream().filter(s -> s.species() == species).toList();
      var samples = own.stream().flatMap(SupplierLine::sample).toList();
      var compared = GroupComparison.eachAgainstTheRest(samples);
      own.stream()
          .collect(Collectors.groupingBy(OwnStock::supplier, TreeMap::new, Collectors.toList()))
          .forEach(
              (supplier, some) ->
                  lines.add(line(some, Optional.ofNullable(compared.get(supplier)))));
    }
    return lines;
  }

  private static SupplierLine line(List<OwnStock> stock, Optional<Difference> toOthers) {
    var first = stock.get(0);
    var counted = stock.stream().filter(s -> s.value().isPresent()).toList();
    return new SupplierLine(
        first.species(),
        first.supplier(),
        stock.size(),
        Spread.of(stock.stream().flatMap(s -> s.takeHomePercent().stream()).toList()),
        counted.size(),
        sum(counted.stream().map(OwnStock::cost)),
        sum(counted.stream().flatMap(s -> s.value().stream())),
        marginAUnit(counted),
        toOthers);
  }

  private static Money sum(Stream<Money> amounts) {
    return amounts.reduce(Money.ZERO, Money::plus);
  }

  private static Optional<BigFraction> marginAUnit(List<OwnStock> counted) {
    var weighed = counted.stream().filter(s -> s.cold().isPresent()).toList();
    var cold = Weight.sum(weighed.stream().flatMap(s -> s.cold().stream()).toList());
    var margin = sum(weighed.stream().flatMap(s -> s.margin().stream()));
    return cold.isZero()
        ? Optional.empty()
        : Optional.of(BigFraction.of(margin.minor()).divide(cold.fraction()));
  }

  /** A body whose supplier and margin are known. */
  private static Stream<Sample> sample(OwnStock own) {
    String kind = own.account().classAndStyle();
    return own.marginAUnit().stream()
        .filter(margin -> !own.supplier().isEmpty())
        .map(m -> new Sample(own.account().id(), kind, own.supplier(), m.doubleValue()));
  }
}
