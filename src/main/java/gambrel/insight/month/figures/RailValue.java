package gambrel.insight.month.figures;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a unit of weight on the rail is worth; by it every loss of weight is turned into money. It
 * is the shop's own value of {@code carcase}. Without that it is the value of the take-home of the
 * species' bodies cut in the month and the twelve before, over their weight into the boning room.
 * All values are those of the month's last day, so that months compare by weight and not by price.
 */
public final class RailValue {
  private final ItemValues values;
  private final Map<Species, BigFraction> known = new EnumMap<>(Species.class);
  private final Currency currency;

  /** The values of the last of thirteen months. */
  RailValue(MonthBodies months) {
    var shop = months.night().shop();
    this.values = new ItemValues(shop.values(), months.month().atEndOfMonth());
    this.currency = shop.settings().currency();
    var cut = months.cut();
    for (var species : Species.values()) {
      values
          .carcase()
          .or(() -> fromCuts(MonthBody.of(species, cut)))
          .ifPresent(rate -> known.put(species, rate));
    }
  }

  private Optional<BigFraction> fromCuts(List<MonthBody> cut) {
    var worth = BigFraction.ZERO;
    var boned = BigFraction.ZERO;
    for (var body : cut) {
      var boning = body.balance().boning().filter(w -> !w.isZero());
      var value = BodyValue.of(body, values);
      if (boning.isPresent() && value.isEnough()) {
        worth = worth.add(value.value());
        boned = boned.add(boning.get().fraction());
      }
    }
    return boned.signum() == 0 ? Optional.empty() : Optional.of(worth.divide(boned));
  }

  /** The values of items on the month's last day. */
  public ItemValues items() {
    return values;
  }

  /** Money in the major unit for a unit of weight on the rail; empty where values are missing. */
  public Optional<BigFraction> of(Species species) {
    return Optional.ofNullable(known.get(species));
  }

  /** What a weight in the shop's unit is worth; empty where values are missing. */
  public Optional<Money> of(Species species, BigFraction weight) {
    return of(species).map(rate -> Money.of(rate.multiply(weight), currency));
  }
}
