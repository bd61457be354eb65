package gambrel.trade.shop;

import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Foods;
import gambrel.trade.measure.ByteOrder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Everything in the shop folder but the exports.
 *
 * @param settings the shop's settings
 * @param cuts the cut trees, the shop's own cuts laid over the built-in ones
 * @param ranges what others have published
 * @param foods how food keeps, as published
 * @param customers by id
 * @param bodies by id
 * @param codes what scale codes mean
 * @param scales by id
 * @param bench in file order
 * @param charges in file order
 * @param values in file order
 * @param batches the listed ones, by id
 * @param payments in file order
 * @param corrections in file order
 * @param releases in file order
 */
public record Shop(
    Settings settings,
    CutTrees cuts,
    PublishedRanges ranges,
    Foods foods,
    SortedMap<String, Customer> customers,
    SortedMap<String, Body> bodies,
    List<ScaleCode> codes,
    Map<String, Scale> scales,
    List<BenchEntry> bench,
    List<Charge> charges,
    List<ItemValue> values,
    Map<String, Batch> batches,
    List<Payment> payments,
    List<Correction> corrections,
    List<Release> releases) {
  /** Copies the collections. */
  public Shop {
    customers = ByteOrder.sorted(customers);
    bodies = ByteOrder.sorted(bodies);
    codes = List.copyOf(codes);
    scales = Map.copyOf(scales);
    bench = List.copyOf(bench);
    charges = List.copyOf(charges);
    values = List.copyOf(values);
    batches = Map.copyOf(batches);
    payments = List.copyOf(payments);
    corrections = List.copyOf(corrections);
    releases = List.copyOf(releases);
  }

  /** The batch with this id, listed or not. */
  public Batch batch(String id) {
    return Optional.ofNullable(batches.get(id)).orElseGet(() -> Batch.unlisted(id));
  }

  /** The customer with this id; the shop itself under its reserved id. */
  public Customer customer(String id) {
    return Optional.ofNullable(customers.get(id))
        .orElseGet(
            () -> new Customer(id, id.equals(Customer.SHOP) ? settings.name() : id, "", "", ""));
  }
}
