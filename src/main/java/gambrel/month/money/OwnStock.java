package gambrel.month.money;

import gambrel.balance.Drawn;
import gambrel.balance.Outputs;
import gambrel.measure.Money;
import gambrel.measure.Share;
import gambrel.measure.Weight;
import gambrel.month.BodyValue;
import gambrel.month.ItemValues;
import gambrel.month.MonthRecords;
import gambrel.month.Ownership;
import gambrel.month.Settled;
import gambrel.month.value.Lately;
import gambrel.reckoning.BodyAccount;
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
    BodyAccount account, Money cost, Optional<Money> value, Optional<Weight> cold) {

  private static final Drawn<MonthRecords, List<OwnStock>> OF_MONTH =
      new Drawn<>(records -> of(records, Settled.of(records.bodies().cut())));

  private static final Drawn<MonthRecords, List<OwnStock>> LATELY =
      new Drawn<>(records -> of(records, Lately.settled(records)));

  /** Those cut in a month whose weights hold, at the month's values. */
  public static List<OwnStock> ofMonth(MonthRecords records) {
    return OF_MONTH.of(records);
  }

  /** Those cut in a month or the twelve before it, at the month's values. */
  public static List<OwnStock> lately(MonthRecords records) {
    return LATELY.of(records);
  }

  private static List<OwnStock> of(MonthRecords records, List<BodyAccount> accounts) {
    return of(
        accounts, records.rail().items(), records.night().shop().settings().currency());
  }

  /** The bodies of the shop alone whose cost is known. */
  public static List<OwnStock> of(
      Collection<BodyAccount> accounts, ItemValues values, Currency currency) {
    return accounts.stream()
        .filter(a -> Ownership.of(a) == Ownership.OWN && a.body().cost().isPresent())
        .map(a -> of(a, values, currency))
        .toList();
  }

  private static OwnStock of(BodyAccount account, ItemValues values, Currency currency) {
    var value = BodyValue.of(account.balance(), values);
    return new OwnStock(
        account,
        account.body().cost().orElseThrow(),
        Optional.of(value)
            .filter(BodyValue::isEnough)
            .map(v -> Money.of(whole(v), currency)),
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
    return margin()
        .flatMap(m -> cold.map(c -> BigFraction.of(m.minor()).divide(c.fraction())));
  }

  /** Take-home of cold weight, in per cent. */
  public Optional<BigFraction> takeHomePercent() {
    return account.balance().shares().takeHomeOfCold().map(Share::percent);
  }

  /** Take-home. */
  public Optional<Weight> takeHome() {
    return account.balance().outputs().map(Outputs::takeHome);
  }
}
