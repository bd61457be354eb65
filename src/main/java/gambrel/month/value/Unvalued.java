package gambrel.month.value;

import gambrel.cuts.Item;
import gambrel.month.ItemValues;
import gambrel.reckoning.BodyAccount;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

/** Items that people eat and that have no value. */
public final class Unvalued {
  private Unvalued() {}

  /** Those among the end products of some bodies. */
  public static List<Item> of(Collection<BodyAccount> accounts, ItemValues values) {
    var missing = new LinkedHashSet<Item>();
    for (var account : accounts) {
      var products = new Products(account.balance(), values);
      var tree = account.balance().weighings().tree();
      Products.of(account.balance()).stream()
          .filter(Products.Product::food)
          .filter(product -> products.worth(List.of(product)).isEmpty())
          .flatMap(product -> tree.find(product.item()).stream())
          .forEach(missing::add);
    }
    return new ArrayList<>(missing);
  }
}
