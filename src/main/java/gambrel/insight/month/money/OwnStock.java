package gambrel.insight.month.money;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.BodyValue;
import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A body that the shop bought for itself: its cost and the worth of its take-home.
 *
 * @param account the body
 * @param cost what the shop paid for it
 * @param value the worth of its take-home at the values of one day; items without a value count at
 *     the mean of the others; empty if more than a tenth has no value
 * @param cold its cold weight; empty if unknown
 */
public record OwnStock(
    MonthBody account, Money cost, Optional<Money> value, Optional<Weight> cold) {

  /** The shop's own bodies among {@code bodies} whose cost is known, at the month's values. */
  public static List<OwnStock> of(MonthRecords records, List<MonthBody> bodies) {
    return of(bodies, records.rail().items(), records.settings().currency());
  }

  /** The shop's own bodies among {@code accounts} whose cost is known. */
  public static List<OwnStock> of(
      Collection<MonthBody> accounts, ItemValues values, Currency currency) {
    return accounts.stream()
        .filter(a -> a.whose() == Ownership.OWN && a.body().cost().isPresent())
        .map(a -> of(a, values, currency))
        .toList();
  }

  /** The species of the body. */
  public Species species() {
    return account.species();
  }

  /** Its supplier as {@code bodies.csv} names it; empty if it does not. */
  public String supplier() {
    return account.body().supplier();
  }

  private static OwnStock of(MonthBody account, ItemValues values, Currency currency) {
    var value = BodyValue.of(account, values);
    return new OwnStock(
        account,
        account.body().cost().orElseThrow(),
        Optional.of(value).filter(BodyValue::isEnough).map(v -> Money.of(whole(v), currency)),
        account.balance().cold().filter(weight -> !weight.isZero()));
  }

  private static BigFraction whole(BodyValue value) {
    return value.value().multiply(value.takeHome()).divide(value.valued());
  }

  /** Value less cost; empty if the value is unknown. */
  public Optional<Money> margin() {
    return value.map(v -> v.minus(cost));
  }

  /** Minor units of margin for a unit of cold weight; empty if one of them is unknown. */
  public Optional<BigFraction> marginAUnit() {
    return margin().flatMap(m -> cold.map(c -> BigFraction.of(m.minor()).divide(c.fraction())));
  }

  /** Take-home of cold weight, in per cent; empty if unknown. */
  public Optional<BigFraction> takeHomePercent() {
    return account.percent(BodyFigure.TAKE_HOME);
  }
}
