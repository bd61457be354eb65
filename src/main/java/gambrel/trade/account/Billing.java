package gambrel.trade.account;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Division;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Charge;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Makes the bill of a body.
 *
 * @param shop the shop with the price list
 */
public record Billing(Shop shop) {
  /** What counts work that may not have been done at all; then the minimum is not charged. */
  private static final Set<Charge.Basis> MAY_BE_NONE =
      Set.of(Charge.Basis.TUB, Charge.Basis.PACKED, Charge.Basis.PACK);

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

  /**
   * What the price list asks for the work on a body, without tax, as if one customer owned it all,
   * at the prices of a day. Charges of one body alone are left out. Empty if a quantity is unknown.
   */
  public Optional<Money> asked(BodyBalance balance, LocalDate prices) {
    var owner = Map.of("", BigFraction.ONE);
    var bill = bill(balance, Optional.of(prices), balance.daysHung(), owner);
    return bill.unknown().stream().anyMatch(charge -> charge.body().isEmpty())
        ? Optional.empty()
        : Optional.of(
            Money.sum(
                bill.lines().stream()
                    .filter(line -> line.charge().body().isEmpty())
                    .map(line -> line.parts().get("").net())));
  }

  /**
   * The tubs of a customer's body that name no batch, and that a charge by green weight would count
   * if they named one.
   */
  public List<Weighing> notCharged(BodyBalance balance) {
    var tubs = tubs(balance, false);
    return isShops(balance.body().owners())
        ? List.of()
        : shop.charges().stream()
            .filter(charge -> charge.basis() == Charge.Basis.TUB)
            .filter(charge -> applies(charge, balance.body(), date(balance)))
            .flatMap(charge -> only(charge, balance, tubs).stream())
            .distinct()
            .sorted(Weighing.BY_TIME)
            .toList();
  }

  /** Whether nobody but the shop owns a body, so that nothing is charged. */
  private static boolean isShops(Map<String, BigFraction> owners) {
    return owners.keySet().equals(Set.of(Customer.SHOP));
  }

  private static List<Weighing> tubs(BodyBalance balance, boolean inBatch) {
    var tubs = balance.weighings().of(Step.TUB).stream();
    return tubs.filter(tub -> tub.inBatch() == inBatch).toList();
  }

  private Bill bill(BodyBalance balance, Optional<LocalDate> date, Optional<Integer> daysHung) {
    var owners = balance.body().owners();
    return isShops(owners) ? Bill.NONE : bill(balance, date, daysHung, owners);
  }

  private Bill bill(
      BodyBalance balance,
      Optional<LocalDate> date,
      Optional<Integer> daysHung,
      Map<String, BigFraction> owners) {
    var lines = new ArrayList<Bill.Line>();
    var unknown = new ArrayList<Charge>();
    var hot = balance.hot();
    for (var charge : shop.charges()) {
      if (applies(charge, balance.body(), date) && isInBand(charge, hot)) {
        boolean banded = charge.hotFrom().isPresent() || charge.hotTo().isPresent();
        quantity(charge, balance, daysHung)
            .filter(quantity -> !banded || hot.isPresent())
            .ifPresentOrElse(
                quantity -> lines.add(line(charge, quantity, owners)), () -> unknown.add(charge));
      }
    }
    return new Bill(lines, unknown);
  }

  /** Prices of the day of the first pack apply; without a pack, of the last weighing. */
  private static Optional<LocalDate> date(BodyBalance balance) {
    return balance.weighings().of(Step.PACK).stream()
        .findFirst()
        .or(() -> Weighing.last(balance.weighings().all()))
        .map(Weighing::date);
  }

  private static boolean applies(Charge charge, Body body, Optional<LocalDate> date) {
    return (charge.species().isEmpty() || charge.species().equals(body.species().id()))
        && (charge.category().isEmpty() || charge.category().equals(body.category()))
        && (charge.body().isEmpty() || charge.body().equals(body.id()))
        && charge.from().filter(from -> date.isEmpty() || from.isAfter(date.get())).isEmpty()
        && charge.to().filter(to -> date.isEmpty() || to.isBefore(date.get())).isEmpty();
  }

  /** Whether the hot weight, if it is known, lies in the band that the charge is for. */
  private static boolean isInBand(Charge charge, Optional<Weight> hot) {
    return hot.isEmpty()
        || charge.hotFrom().filter(from -> hot.get().compareTo(from) < 0).isEmpty()
            && charge.hotTo().filter(to -> hot.get().compareTo(to) >= 0).isEmpty();
  }

  /** The charged quantity, after the free quantity and the minimum; empty if it is not known. */
  private static Optional<BigFraction> quantity(
      Charge charge, BodyBalance balance, Optional<Integer> daysHung) {
    var minimum = Exact.fraction(charge.minimum());
    boolean mayBeNone = MAY_BE_NONE.contains(charge.basis());
    return counted(charge, balance, daysHung)
        .map(
            quantity -> {
              var beyondFree = quantity.subtract(Exact.fraction(charge.free()));
              return mayBeNone && quantity.equals(BigFraction.ZERO)
                  ? quantity
                  : Exact.max(Exact.max(beyondFree, BigFraction.ZERO), minimum);
            });
  }

  private static Optional<BigFraction> counted(
      Charge charge, BodyBalance balance, Optional<Integer> daysHung) {
    var packs = balance.weighings().of(Step.PACK);
    return switch (charge.basis()) {
      case HEAD -> Optional.of(BigFraction.of(balance.body().head()));
      case SHARE -> Optional.of(BigFraction.ONE);
      case LIVE -> balance.body().liveWeight().map(Weight::fraction);
      case HOT -> weight(charge, balance, balance.rail().hot().weighings());
      case COLD -> weight(charge, balance, balance.rail().cold().weighings());
      case BONING -> weight(charge, balance, balance.boningWeighings());
      case DAY -> daysHung.map(BigFraction::of);
      case TUB -> Optional.of(total(charge, balance, tubs(balance, true)));
      case PACKED -> Optional.of(total(charge, balance, packs));
      case PACK -> Optional.of(BigFraction.of(only(charge, balance, packs).size()));
    };
  }

  private static Optional<BigFraction> weight(
      Charge charge, BodyBalance balance, List<Weighing> weighings) {
    return weighings.isEmpty() ? Optional.empty() : Optional.of(total(charge, balance, weighings));
  }

  private static BigFraction total(Charge charge, BodyBalance balance, List<Weighing> weighings) {
    return Weighing.total(only(charge, balance, weighings)).fraction();
  }

  /** The weighings of the item that is charged, or all if the charge names none. */
  private static List<Weighing> only(Charge charge, BodyBalance balance, List<Weighing> weighings) {
    var tree = balance.weighings().tree();
    return weighings.stream()
        .filter(w -> charge.item().isEmpty() || tree.isUnder(w.item(), charge.item()))
        .toList();
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
