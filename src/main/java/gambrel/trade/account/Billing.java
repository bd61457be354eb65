package gambrel.trade.account;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Division;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Charge;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Makes the bill of a body from the shop's price list. */
public final class Billing {
  private final Shop shop;

  /** For a shop with this price list. */
  public Billing(Shop shop) {
    this.shop = shop;
  }

  /** The bill of a body; empty if the body is the shop's alone. */
  public Bill bill(BodyBalance balance) {
    return bill(balance, date(balance), balance.daysHung());
  }

  /**
   * What one day more on the rail adds to the customers' charges, without tax, at the prices of a
   * day and with its weights as they are. Empty if the days hung, or what a day costs, are not
   * known.
   */
  public Optional<Money> furtherDay(BodyBalance balance, LocalDate prices) {
    var day = Optional.of(prices);
    var now = bill(balance, day, balance.daysHung());
    return balance
        .daysHung()
        .map(days -> bill(balance, day, Optional.of(days + 1)))
        .filter(b -> b.unknown().stream().noneMatch(c -> c.basis() == Charge.Basis.DAY))
        .map(bill -> bill.net().minus(now.net()));
  }

  private Bill bill(BodyBalance balance, Optional<LocalDate> date, Optional<Integer> daysHung) {
    var owners = balance.body().owners();
    if (owners.keySet().equals(Set.of(Customer.SHOP))) {
      return Bill.NONE;
    }
    var lines = new ArrayList<Bill.Line>();
    var unknown = new ArrayList<Charge>();
    for (var charge : shop.charges()) {
      if (!applies(charge, balance.body(), date)) {
        continue;
      }
      boolean banded = charge.hotFrom().isPresent() || charge.hotTo().isPresent();
      if (banded && balance.hot().isEmpty()) {
        unknown.add(charge);
      } else if (!banded || inBand(charge, balance)) {
        Quantity.billed(charge, balance, daysHung)
            .ifPresentOrElse(
                quantity -> lines.add(line(charge, quantity, owners)), () -> unknown.add(charge));
      }
    }
    return new Bill(lines, unknown);
  }

  /** Prices of the day of the first pack apply; without a pack, of the last weighing. */
  private static Optional<LocalDate> date(BodyBalance balance) {
    var packs = balance.weighings().of(Step.PACK);
    var all = balance.weighings().all();
    if (!packs.isEmpty()) {
      return Optional.of(packs.get(0).date());
    }
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1).date());
  }

  private static boolean applies(Charge charge, Body body, Optional<LocalDate> date) {
    return (charge.species().isEmpty() || charge.species().equals(body.species().id()))
        && (charge.category().isEmpty() || charge.category().equals(body.category()))
        && (charge.body().isEmpty() || charge.body().equals(body.id()))
        && charge.from().filter(from -> date.isEmpty() || from.isAfter(date.get())).isEmpty()
        && charge.to().filter(to -> date.isEmpty() || to.isBefore(date.get())).isEmpty();
  }

  private static boolean inBand(Charge charge, BodyBalance balance) {
    var hot = balance.hot().orElseThrow();
    return charge.hotFrom().filter(from -> hot.compareTo(from) < 0).isEmpty()
        && charge.hotTo().filter(to -> hot.compareTo(to) >= 0).isEmpty();
  }

  private Bill.Line line(Charge charge, BigFraction quantity, Map<String, BigFraction> owners) {
    var amount =
        Money.of(quantity.multiply(Exact.fraction(charge.price())), shop.settings().currency());
    var tax = tax(charge, amount);
    return new Bill.Line(charge, quantity, amount, tax, parts(charge, amount, tax, owners));
  }

  private Money tax(Charge charge, Money amount) {
    var rate = Exact.fraction(charge.taxPercent());
    var base = shop.settings().taxIncluded() ? Exact.HUNDRED.add(rate) : Exact.HUNDRED;
    return new Money(Exact.units(rate.multiply(BigFraction.of(amount.minor())).divide(base), 0));
  }

  private SortedMap<String, Bill.Part> parts(
      Charge charge, Money amount, Money tax, Map<String, BigFraction> owners) {
    var parts = new TreeMap<String, Bill.Part>();
    boolean each = charge.basis() == Charge.Basis.SHARE;
    var amounts = Division.divide(amount.minor(), owners);
    var taxes = Division.divide(tax.minor(), owners);
    for (String customer : owners.keySet()) {
      if (!customer.equals(Customer.SHOP)) {
        var own = each ? amount : new Money(amounts.get(customer));
        var ownTax = each ? tax : new Money(taxes.get(customer));
        parts.put(
            customer,
            new Bill.Part(shop.settings().taxIncluded() ? own.minus(ownTax) : own, ownTax));
      }
    }
    return parts;
  }
}
