package gambrel.ownerpages;

import gambrel.reckoning.BodyAccount;
import gambrel.shop.Customer;
import java.util.Set;

/** Who bears what a body loses: figures of different owners are never added together. */
enum Ownership {
  /** Customers alone. */
  CUSTOMERS,
  /** The shop alone. */
  OWN,
  /** Customers and the shop by shares. */
  SHARED;

  /** Whose a body is. */
  static Ownership of(BodyAccount account) {
    Set<String> owners = account.body().owners().keySet();
    if (!owners.contains(Customer.SHOP)) {
      return CUSTOMERS;
    }
    return owners.size() == 1 ? OWN : SHARED;
  }

  /** The key of its words. */
  String key() {
    return switch (this) {
      case CUSTOMERS -> "summary.customers";
      case OWN -> "summary.own";
      case SHARED -> "summary.shared";
    };
  }
}
