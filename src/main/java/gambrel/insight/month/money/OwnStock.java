package gambrel.insight.month.money;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.BodyValue;
import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A body that the shop bought for itself: what it cost and what its take-home is worth.
 *
 * @param account the body
 * @param cost what the shop paid
 * @param value what its take-home is worth at the values of one day; what little of it has no value
 *     counts at the mean of the rest; empty where too much has none
 * @param cold its cold weight; empty where not known
 */
public record OwnStock(
    MonthBody account, Money cost, Optional<Money> value, Optional<Weight> cold) {

  /** The own bodies among {@code bodies} whose cost is known, at the month's values. */
  public static List<OwnStock> of(MonthRecords records, List<MonthBody> bodies) {
    return of(bodies, records.rail().items(), records.settings().currency());
  }

  /** The bodies of the shop alone whose cost is known. */
  public static List<OwnStock> of(
      Collection<MonthBody> accounts, ItemValues values, Currency currency) {
    return accounts.stream()
        .filter(a -> a.whose() == Ownership.OWN && a.body().cost().isPresent())
        .map(a -> of(a, values, currency))
        .toList();
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

  /** Value less cost. */
  public Optional<Money> margin() {
    return value.map(v -> v.minus(cost));
  }

  /** Minor units of margin for a unit of cold weight. */
  public Optional<BigFraction> marginAUnit() {
    return margin().flatMap(m -> cold.map(c -> BigFraction.of(m.minor()).divide(c.fraction())));
  }

  /** Take-home of cold weight, in per cent. */
  public Optional<BigFraction> takeHomePercent() {
    return account.percent(BodyFigure.TAKE_HOME);
  }
}
