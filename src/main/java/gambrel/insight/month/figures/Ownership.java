package gambrel.insight.month.figures;

import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Customer;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Who bears a body's losses. Weights and money of different owners are never added. */
public enum Ownership implements FileWord {
  /** Customers alone. */
  CUSTOMERS,
  /** The shop alone. */
  OWN,
  /** Customers and the shop, each a share. */
  SHARED;

  /** Who owns a body. */
  public static Ownership of(BodyAccount account) {
    Set<String> owners = account.body().owners().keySet();
    if (!owners.contains(Customer.SHOP)) {
      return CUSTOMERS;
    }
    return owners.size() == 1 ? OWN : SHARED;
  }

  /** The owners of some bodies, in order. */
  public static List<Ownership> in(Collection<MonthBody> bodies) {
    return bodies.stream().map(MonthBody::whose).distinct().sorted().toList();
  }

  /** The bodies in the list that belong to this owner. */
  public List<MonthBody> of(Collection<MonthBody> bodies) {
    return bodies.stream().filter(b -> b.whose() == this).toList();
  }

  /**
   * The sum of a weight over the bodies of each owner, in the shop's unit, in the order of owners.
   *
   * @param weight of one body; empty if unknown
   */
  public static Map<Ownership, BigFraction> weights(
      Collection<MonthBody> bodies, Function<MonthBody, Optional<Weight>> weight) {
    var sums = new EnumMap<Ownership, BigFraction>(Ownership.class);
    for (var body : bodies) {
      weight.apply(body).ifPresent(w -> sums.merge(body.whose(), w.fraction(), BigFraction::add));
    }
    return sums;
  }
}
