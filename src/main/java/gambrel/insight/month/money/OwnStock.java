package gambrel.insight.month.money;

import gambrel.insight.month.figures.BodyRate;
import gambrel.insight.month.figures.BodyValue;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.ItemValues;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.Ownership;
import gambrel.trade.measure.Money;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A body that the shop bought for itself: its cost and the worth of its take-home.
 *
 * @param account the body
 * @param cost what the shop paid for it
 * @param value the worth of its take-home at the values of one day; items without a value count at
 *     the mean of the others; empty if more than a tenth has no value
 * @param currency the shop's
 */
public record OwnStock(MonthBody account, Money cost, Optional<Money> value, Currency currency) {
  /** The shop's own bodies among {@code accounts} whose cost is known. */
  public static List<OwnStock> of(
      Collection<MonthBody> accounts, ItemValues values, Currency currency) {
    return Ownership.OWN.of(accounts).stream()
        .flatMap(own -> own.body().cost().map(cost -> of(own, cost, values, currency)).stream())
        .toList();
  }

  private static OwnStock of(MonthBody own, Money cost, ItemValues values, Currency currency) {
    var value = Optional.of(BodyValue.of(own, values)).filter(BodyValue::isEnough);
    return new OwnStock(own, cost, value.map(v -> Money.of(v.whole(), currency)), currency);
  }

  /** Value less cost; empty if the value is unknown. */
  public Optional<Money> margin() {
    return value.map(v -> v.minus(cost));
  }

  /** Its margin on its cold weight; empty if one of them is unknown. */
  Optional<BodyRate> marginOfCold() {
    return account
        .balance()
        .cold()
        .filter(cold -> !cold.isZero())
        .flatMap(
            cold ->
                margin().map(m -> new BodyRate(account, m.fraction(currency), cold.fraction())));
  }

  /** The bodies of the month that are worth less than they cost; empty if there is none. */
  public static Optional<Finding> finding(Collection<OwnStock> ofMonth) {
    var losing =
        ofMonth.stream()
            .filter(s -> s.margin().filter(m -> m.compareTo(Money.ZERO) < 0).isPresent())
            .toList();
    var ids = MonthBody.ids(losing.stream().map(OwnStock::account).toList());
    return losing.stream()
        .map(own -> own.cost().minus(own.value().orElseThrow()))
        .reduce(Money::plus)
        .map(
            lost ->
                Finding.certain(
                    Finding.Kind.STOCK,
                    losing.size() == 1 ? "loss.one" : "loss.many",
                    ids,
                    Map.of(
                        "bodies", new Evidence.Count(losing.size()),
                        "which", new Evidence.Bodies(ids),
                        "loss", new Evidence.Cash(lost)),
                    Finding.Cost.ofShop(lost)));
  }
}
