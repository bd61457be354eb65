package gambrel.insight.month.money;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Customer;
import java.util.Collection;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What customers are charged, without tax, for bodies of a species, over the weight that came into
 * the boning room for them. The shop's own part of a shared body brings no charge and counts no
 * weight.
 *
 * @param charges all charges, tax left out
 * @param weight the customers' part of the weight into the boning room
 * @param bodies how many bodies
 */
public record Income(Money charges, BigFraction weight, int bodies) {
  private static final Income NONE = new Income(Money.ZERO, BigFraction.ZERO, 0);

  /** Of all of {@code accounts} of a species whose weight and charges are known. */
  public static Income of(Species species, Collection<MonthBody> accounts) {
    return accounts.stream()
        .filter(a -> a.body().species() == species)
        .flatMap(a -> of(a).stream())
        .reduce(NONE, Income::plus);
  }

  /** Of one body; empty for the shop's own, without its weight, and while a charge is not known. */
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

  /** Minor units of money for a unit of weight; empty where nothing came in. */
  public Optional<BigFraction> minorAUnit() {
    return weight.signum() == 0
        ? Optional.empty()
        : Optional.of(BigFraction.of(charges.minor()).divide(weight));
  }
}
