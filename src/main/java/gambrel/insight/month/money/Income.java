package gambrel.insight.month.money;

import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Customer;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What customers are charged, without tax, for some bodies, and their weight into the boning room.
 * The shop's own part of a shared body has no charge, and its weight does not count.
 *
 * @param charges all charges, without tax
 * @param weight the customers' part of the weight into the boning room, in the shop's unit
 * @param bodies how many bodies
 */
public record Income(Money charges, BigFraction weight, int bodies) {
  private static final Income NONE = new Income(Money.ZERO, BigFraction.ZERO, 0);

  /** The income of a month's settled bodies, for each species of which something was charged. */
  public static List<Compared<Income>> of(MonthRecords records) {
    return records.settled().stream()
        .map(bodies -> bodies.map(all -> of(bodies.species(), all)))
        .filter(income -> income.month().bodies() > 0)
        .toList();
  }

  /** The income of the bodies of a species whose weight and charges are known. */
  public static Income of(Species species, Collection<MonthBody> bodies) {
    return MonthBody.of(species, bodies).stream()
        .flatMap(body -> of(body).stream())
        .reduce(NONE, Income::plus);
  }

  /**
   * The income of one body; empty for the shop's own bodies, or if the weight or a charge is
   * unknown.
   */
  public static Optional<Income> of(MonthBody account) {
    if (account.bill().lines().isEmpty() || !account.bill().unknown().isEmpty()) {
      return Optional.empty();
    }
    return account
        .balance()
        .boning()
        .filter(weight -> !weight.isZero())
        .map(weight -> new Income(charges(account), customersPart(account, weight), 1))
        .filter(income -> income.weight().signum() > 0);
  }

  private static Money charges(MonthBody account) {
    return account.account().customers().stream()
        .map(customer -> account.bill().net(customer))
        .reduce(Money.ZERO, Money::plus);
  }

  private static BigFraction customersPart(MonthBody account, Weight weight) {
    var own = account.body().owners().getOrDefault(Customer.SHOP, BigFraction.ZERO);
    return weight.fraction().multiply(BigFraction.ONE.subtract(own));
  }

  private Income plus(Income other) {
    return new Income(charges.plus(other.charges), weight.add(other.weight), bodies + other.bodies);
  }

  /** Minor units of money for a unit of weight; empty without weight. */
  public Optional<BigFraction> minorAUnit() {
    return weight.signum() == 0
        ? Optional.empty()
        : Optional.of(BigFraction.of(charges.minor()).divide(weight));
  }
}
