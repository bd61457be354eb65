package gambrel.insight.month.bodies;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a unit of weight on the rail is worth, by which every loss of weight is turned into money:
 * the shop's own value of {@code carcase}, else the value of the take-home of the species' bodies
 * cut in the month and the twelve before, over their weight into the boning room. Values are those
 * in force on the month's last day, so that months compare by weight and not by price.
 */
public final class RailValue {
  private final ItemValues values;
  private final Map<Species, BigFraction> known = new EnumMap<>(Species.class);
  private final Currency currency;

  /** The values of a month. */
  public RailValue(MonthBodies month, Baseline baseline) {
    var shop = month.night().shop();
    this.values = new ItemValues(shop.values(), baseline.lastDay());
    this.currency = shop.settings().currency();
    var cut = Stream.concat(baseline.cut().stream(), month.cut().stream()).toList();
    for (var species : Species.values()) {
      values.carcase().or(() -> fromCuts(cut, species)).ifPresent(rate -> known.put(species, rate));
    }
  }

  /** The values in force on the month's last day. */
  public ItemValues items() {
    return values;
  }

  /** Money in the major unit for a unit of weight on the rail; empty where values are missing. */
  public Optional<BigFraction> of(Species species) {
    return Optional.ofNullable(known.get(species));
  }

  /** What a weight is worth. */
  public Optional<Money> of(Species species, Weight weight) {
    return of(species, weight.fraction());
  }

  /** What a weight in the shop's unit is worth. */
  public Optional<Money> of(Species species, BigFraction weight) {
    return of(species).map(rate -> Money.of(rate.multiply(weight), currency));
  }

  private Optional<BigFraction> fromCuts(List<MonthBody> cut, Species species) {
    var worth = BigFraction.ZERO;
    var boned = BigFraction.ZERO;
    for (var account : cut.stream().filter(a -> a.body().species() == species).toList()) {
      var boning = account.balance().boning().filter(w -> !w.isZero());
      var value = BodyValue.of(account, values);
      if (boning.isPresent() && value.isEnough()) {
        worth = worth.add(value.value());
        boned = boned.add(boning.get().fraction());
      }
    }
    return boned.signum() == 0 ? Optional.empty() : Optional.of(worth.divide(boned));
  }
}
