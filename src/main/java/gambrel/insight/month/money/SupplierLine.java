package gambrel.insight.month.money;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyRate;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.insight.month.figures.GroupComparison.Sample;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Spread;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The shop's own bodies of one species from one supplier.
 *
 * @param species the species
 * @param supplier as {@code bodies.csv} names it; empty if it does not
 * @param bodies the bodies
 * @param toOthers margin for a unit of cold weight, less that of other suppliers' bodies of the
 *     same class, cut the same way, in the major unit; empty where there are too few
 */
public record SupplierLine(
    Species species, String supplier, List<OwnStock> bodies, Optional<Difference> toOthers) {

  /** The lines of some bodies, by species, then by supplier. */
  public static List<SupplierLine> of(Collection<OwnStock> stock) {
    var lines = new ArrayList<SupplierLine>();
    for (var species : Species.values()) {
      var own = stock.stream().filter(body -> body.account().species() == species).toList();
      var samples = rates(own).stream().flatMap(rate -> sample(rate).stream()).toList();
      var compared = GroupComparison.eachAgainstTheRest(samples, 1);
      new TreeMap<>(Groups.inOrder(own.stream(), body -> body.account().body().supplier()))
          .forEach(
              (supplier, some) ->
                  lines.add(
                      new SupplierLine(
                          species, supplier, some, Optional.ofNullable(compared.get(supplier)))));
    }
    return lines;
  }

  /** The spread of take-home of cold weight, in per cent; empty if unknown of all. */
  public Optional<Spread> takeHome() {
    return BodyFigure.TAKE_HOME.spread(bodies.stream().map(OwnStock::account).toList());
  }

  private Stream<OwnStock> counted() {
    return bodies.stream().filter(own -> own.value().isPresent());
  }

  /** The sum of an amount over the bodies that have a value; empty if none has. */
  public Optional<Money> sum(Function<OwnStock, Optional<Money>> amount) {
    return counted().map(amount).flatMap(Optional::stream).reduce(Money::plus);
  }

  /** Margin for a unit of cold weight, of all bodies together. */
  public MonthFigure figure() {
    var name = FigureName.MARGIN_OF_COLD;
    var group = new MonthFigure.Named(supplier);
    return MonthFigure.of(name, species, group, (int) counted().count(), BodyRate.of(rates(bodies)))
        .with(toOthers.map(MonthFigure.Interval::of));
  }

  /**
   * That the supplier's bodies left less than those of others, beyond chance; empty if they did
   * not, or if none of them is of the month.
   *
   * @param ofMonth the shop's own bodies of the month
   */
  public Stream<Finding> finding(Collection<OwnStock> ofMonth) {
    var bought = bodies.stream().filter(ofMonth::contains).toList();
    return toOthers.stream()
        .filter(difference -> difference.high() < 0 && !bought.isEmpty())
        .map(difference -> finding(bought, difference.reversed()));
  }

  private Finding finding(List<OwnStock> bought, Difference less) {
    var accounts = bought.stream().map(OwnStock::account).toList();
    var cold = Weight.sum(accounts.stream().flatMap(a -> a.balance().cold().stream()).toList());
    return Finding.likely(
        Finding.Kind.SUPPLIER,
        "margin",
        MonthBody.ids(accounts),
        less.evidence(
            List.of("less", "bodies", "others"),
            Evidence.Rate::new,
            Map.of("species", new Evidence.Kind(species), "supplier", new Evidence.Name(supplier))),
        Finding.Cost.ofShop(Money.of(less.times(cold.fraction()), bought.get(0).currency())));
  }

  /** A body whose supplier is known. */
  private static Optional<Sample> sample(BodyRate rate) {
    var body = rate.body();
    return Optional.of(body.body().supplier())
        .filter(supplier -> !supplier.isEmpty())
        .map(of -> new Sample(body.classAndStyle(), of, rate.rate().doubleValue()));
  }

  private static List<BodyRate> rates(List<OwnStock> bodies) {
    return bodies.stream().flatMap(own -> own.marginOfCold().stream()).toList();
  }
}
