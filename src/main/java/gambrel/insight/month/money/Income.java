package gambrel.insight.month.money;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.BodyRate;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Customer;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What customers are charged for bodies, without tax, on their part of the weight into the boning
 * room. The shop's own part of a shared body has no charge, and its weight does not count.
 */
public final class Income {
  private Income() {}

  /** The income of a month's settled bodies, for each species of which something was charged. */
  public static List<Compared<List<BodyRate>>> of(MonthRecords records) {
    return records.settled().stream()
        .map(bodies -> bodies.map(all -> of(records, all)))
        .filter(income -> !income.month().isEmpty())
        .toList();
  }

  /** The income of the bodies whose weight and charges are known. */
  public static List<BodyRate> of(MonthRecords records, Collection<MonthBody> bodies) {
    return bodies.stream().flatMap(body -> of(records, body).stream()).toList();
  }

  /**
   * The income of one body; empty for the shop's own bodies, or if the weight or a charge is
   * unknown.
   */
  static Optional<BodyRate> of(MonthRecords records, MonthBody body) {
    var bill = body.account().bill();
    var charges = Money.sum(body.account().customers().stream().map(bill::net));
    return customersWeight(body)
        .filter(weight -> !bill.lines().isEmpty() && bill.unknown().isEmpty())
        .map(weight -> new BodyRate(body, charges.fraction(records.settings().currency()), weight));
  }

  /** The customers' part of the weight into the boning room; empty if unknown or zero. */
  static Optional<BigFraction> customersWeight(MonthBody body) {
    var own = body.body().owners().getOrDefault(Customer.SHOP, BigFraction.ZERO);
    return body.balance()
        .boning()
        .map(weight -> weight.fraction().multiply(BigFraction.ONE.subtract(own)))
        .filter(weight -> weight.signum() > 0);
  }

  /** The charges for a unit of weight of a species. */
  public static MonthFigure figure(Compared<List<BodyRate>> income) {
    var name = FigureName.CHARGES_OF_BONING;
    var before = income.before();
    return BodyRate.figure(name, income.species(), BodyGroup.ALL, income.month(), before)
        .with(MonthFigure.Comparison.of(before.size(), BodyRate.of(before)));
  }

  /** Species of which customers were charged less for a unit of weight than before. */
  public static List<Finding> findings(MonthRecords records) {
    return of(records).stream()
        .flatMap(
            income ->
                GroupComparison.difference(
                        income,
                        rate -> Optional.of(rate.rate()),
                        rate -> rate.body().body().category(),
                        Species.values().length)
                    .stream()
                    .filter(change -> change.high() < 0)
                    .map(change -> finding(records, income, change.reversed())))
        .toList();
  }

  private static Finding finding(
      MonthRecords records, Compared<List<BodyRate>> income, Difference less) {
    var bodies = income.month();
    var missed = less.times(BodyRate.sum(bodies, BodyRate::weight));
    return Finding.likely(
        Finding.Kind.CHARGES,
        "",
        MonthBody.ids(bodies.stream().map(BodyRate::body).toList()),
        less.evidence(
            List.of("less", "bodies", "bodies_before"),
            Evidence.Rate::new,
            Map.of(
                "species", new Evidence.Kind(income.species()),
                "charge", new Evidence.Rate(BodyRate.of(bodies).orElseThrow()),
                "usual", new Evidence.Rate(BodyRate.of(income.before()).orElseThrow()))),
        Finding.Cost.ofShop(Money.of(missed, records.settings().currency())));
  }
}
