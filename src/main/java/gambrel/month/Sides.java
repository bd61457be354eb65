package gambrel.month;

import gambrel.measure.Money;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a loss on some bodies costs, by whose they are: a customer's loss and the shop's never add. */
public final class Sides {
  private Sides() {}

  /**
   * The cost to each side that has any of the bodies.
   *
   * @param weight of a body, so far as it is known
   * @param rate money in the major unit for a unit of that weight
   */
  public static List<Evidence.Cost> costs(
      Collection<BodyAccount> accounts,
      Function<BodyAccount, Optional<Weight>> weight,
      BigFraction rate,
      Currency currency) {
    var costs = new ArrayList<Evidence.Cost>();
    for (var whose : Ownership.values()) {
      var sum =
          Weight.sum(
              accounts.stream()
                  .filter(a -> Ownership.of(a) == whose)
                  .flatMap(a -> weight.apply(a).stream())
                  .toList());
      if (!sum.isZero()) {
        costs.add(
            new Evidence.Cost(whose, Money.of(sum.fraction().multiply(rate), currency)));
      }
    }
    return costs;
  }
}
