package gambrel.insight.month.bodies;

import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Customer;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Who bears what a body loses: figures of different owners are never added together. */
public enum Ownership {
  /** Customers alone. */
  CUSTOMERS,
  /** The shop alone. */
  OWN,
  /** Customers and the shop by shares. */
  SHARED;

  /** Whose a body is. */
  public static Ownership of(BodyAccount account) {
    Set<String> owners = account.body().owners().keySet();
    if (!owners.contains(Customer.SHOP)) {
      return CUSTOMERS;
    }
    return owners.size() == 1 ? OWN : SHARED;
  }

  /** Whose there are among some bodies, in order. */
  public static List<Ownership> in(Collection<MonthBody> bodies) {
    return bodies.stream().map(MonthBody::whose).distinct().sorted().toList();
  }

  /** The bodies in the list whose loss this owner bears. */
  public List<MonthBody> of(Collection<MonthBody> bodies) {
    return bodies.stream().filter(b -> b.whose() == this).toList();
  }

  /** Its name in data files, and the last part of its words' key. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
