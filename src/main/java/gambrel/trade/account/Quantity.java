package gambrel.trade.account;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Charge;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Counts the quantity of a charge. */
final class Quantity {
  private Quantity() {}

  /**
   * The billed quantity; empty if it is not known.
   *
   * @param daysHung the days to charge for
   */
  static Optional<BigFraction> billed(
      Charge charge, BodyBalance balance, Optional<Integer> daysHung) {
    return counted(charge, balance, daysHung)
        .map(
            quantity -> {
              if (quantity.equals(BigFraction.ZERO) && isOptional(charge.basis())) {
                return quantity;
              }
              var beyondFree = quantity.subtract(Exact.fraction(charge.free()));
              return Exact.max(
                  Exact.max(beyondFree, BigFraction.ZERO), Exact.fraction(charge.minimum()));
            });
  }

  /** Whether the work may not have been done at all; then the minimum is not charged. */
  private static boolean isOptional(Charge.Basis basis) {
    return switch (basis) {
      case TUB, PACKED, PACK -> true;
      case HEAD, LIVE, HOT, COLD, BONING, DAY, SHARE -> false;
    };
  }

  private static Optional<BigFraction> counted(
      Charge charge, BodyBalance balance, Optional<Integer> daysHung) {
    return switch (charge.basis()) {
      case HEAD -> Optional.of(BigFraction.of(balance.body().head()));
      case SHARE -> Optional.of(BigFraction.ONE);
      case LIVE -> balance.body().liveWeight().map(Weight::fraction);
      case HOT -> weight(charge, balance, balance.rail().hot().weighings());
      case COLD -> weight(charge, balance, balance.rail().cold().weighings());
      case BONING -> weight(charge, balance, balance.boningWeighings());
      case DAY -> daysHung.map(BigFraction::of);
      case TUB -> Optional.of(total(charge, balance, tubs(balance)));
      case PACKED -> Optional.of(total(charge, balance, balance.weighings().of(Step.PACK)));
      case PACK ->
          Optional.of(
              BigFraction.of(only(charge, balance, balance.weighings().of(Step.PACK)).size()));
    };
  }

  private static List<Weighing> tubs(BodyBalance balance) {
    return balance.weighings().of(Step.TUB).stream().filter(Weighing::inBatch).toList();
  }

  private static Optional<BigFraction> weight(
      Charge charge, BodyBalance balance, List<Weighing> weighings) {
    return weighings.isEmpty() ? Optional.empty() : Optional.of(total(charge, balance, weighings));
  }

  private static BigFraction total(Charge charge, BodyBalance balance, List<Weighing> weighings) {
    return Weighing.total(only(charge, balance, weighings)).fraction();
  }

  private static List<Weighing> only(Charge charge, BodyBalance balance, List<Weighing> weighings) {
    if (charge.item().isEmpty()) {
      return weighings;
    }
    var tree = balance.weighings().tree();
    return weighings.stream().filter(w -> tree.isUnder(w.item(), charge.item())).toList();
  }
}
