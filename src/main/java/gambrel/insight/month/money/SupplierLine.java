package gambrel.insight.month.money;

import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.insight.month.yields.BonerComparison;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the shop's own bodies of one species from one supplier came to.
 *
 * @param species the species
 * @param supplier as {@code bodies.csv} names it; empty where it does not
 * @param bodies how many bodies
 * @param takeHome of cold weight, in per cent
 * @param counted how many of the bodies have a value
 * @param cost of those
 * @param value of those
 * @param marginAUnit minor units of margin for a unit of cold weight, all over all
 * @param toOthers how far the bodies' margin for a unit of cold weight lies from that of the other
 *     suppliers' bodies of the same class, cut the same way; empty where there are too few
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

  /** Value less cost, of the bodies that have a value. */
  public Money margin() {
    return value.minus(cost);
  }

  /** By species, then by supplier. */
  public static List<SupplierLine> of(Collection<OwnStock> stock) {
    var lines = new ArrayList<SupplierLine>();
    for (var species : Species.values()) {
      var own = stock.stream().filter(s -> s.account().body().species() == species).toList();
      var compared = GroupComparison.eachAgainstTheRest(samples(own));
      var bySupplier = new TreeMap<String, List<OwnStock>>();
      own.forEach(s -> bySupplier.computeIfAbsent(supplier(s), name -> new ArrayList<>()).add(s));
      bySupplier.forEach(
          (supplier, some) ->
              lines.add(
                  line(species, supplier, some, Optional.ofNullable(compared.get(supplier)))));
    }
    return lines;
  }

  private static SupplierLine line(
      Species species, String supplier, List<OwnStock> stock, Optional<Difference> toOthers) {
    var counted = stock.stream().filter(s -> s.value().isPresent()).toList();
    var cost = counted.stream().map(OwnStock::cost).reduce(Money.ZERO, Money::plus);
    var value = counted.stream().map(s -> s.value().orElseThrow()).reduce(Money.ZERO, Money::plus);
    return new SupplierLine(
        species,
        supplier,
        stock.size(),
        Spread.of(stock.stream().flatMap(s -> s.takeHomePercent().stream()).toList()),
        counted.size(),
        cost,
        value,
        marginAUnit(counted),
        toOthers);
  }

  private static Optional<BigFraction> marginAUnit(List<OwnStock> counted) {
    var weighed = counted.stream().filter(s -> s.cold().isPresent()).toList();
    var cold = Weight.sum(weighed.stream().map(s -> s.cold().orElseThrow()).toList());
    var margin =
        weighed.stream().map(s -> s.margin().orElseThrow()).reduce(Money.ZERO, Money::plus);
    return cold.isZero()
        ? Optional.empty()
        : Optional.of(BigFraction.of(margin.minor()).divide(cold.fraction()));
  }

  private static List<Sample> samples(List<OwnStock> stock) {
    var samples = new ArrayList<Sample>();
    for (var own : stock) {
      var body = own.account().body();
      own.marginAUnit()
          .filter(margin -> !body.supplier().isEmpty())
          .ifPresent(
              margin ->
                  samples.add(
                      new Sample(
                          body.id(),
                          BonerComparison.kind(own.account()),
                          body.supplier(),
                          margin.doubleValue())));
    }
    return samples;
  }

  private static String supplier(OwnStock stock) {
    return stock.account().body().supplier();
  }
}
