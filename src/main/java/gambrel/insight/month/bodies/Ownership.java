package gambrel.insight.month.bodies;

import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Customer;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Who bears a body's losses. Weights and money of different owners are never added. */
public enum Ownership {
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

  /** Its name in data files, and the last part of its words' key. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
