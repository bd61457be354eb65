package gambrel.trade.shop;

import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Foods;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.ByteOrder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;

/**
 * The shop folder without the exports.
 *
 * @param settings the shop's settings
 * @param cuts the built-in cut trees with the shop's own cuts
 * @param ranges published ranges of figures
 * @param foods published advice on keeping food
 * @param customers by id
 * @param bodies by id
 * @param codes the meanings of scale codes
 * @param scales by id
 * @param bench in file order
 * @param charges in file order
 * @param values in file order
 * @param batches the listed batches, by id
 * @param payments in file order
 * @param corrections in file order
 * @param releases in file order
 * @param unread the rows that cannot be read, in order
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
    List<Release> releases,
    List<UnreadRow> unread) {
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
    unread = List.copyOf(unread);
  }

  /** The species of the bodies. */
  public Set<Species> species() {
    return bodies.values().stream().map(Body::species).collect(Collectors.toSet());
  }

  /** The rows of a file that cannot be read and name {@code id} in {@code column}. */
  public List<UnreadRow> unread(String file, String column, String id) {
    return unread.isEmpty()
        ? unread
        : unread.stream()
            .filter(row -> row.place().file().equals(file))
            .filter(row -> row.named(column).equals(Optional.of(id)))
            .toList();
  }

  /** The batch with this id; an unlisted one if {@code batches.csv} does not have it. */
  public Batch batch(String id) {
    return Optional.ofNullable(batches.get(id)).orElseGet(() -> Batch.unlisted(id));
  }

  /** The customer with this id; one with only a name if {@code customers.csv} does not have it. */
  public Customer customer(String id) {
    return Optional.ofNullable(customers.get(id))
        .orElseGet(
            () -> {
              String name = id.equals(Customer.SHOP) ? settings.name() : id;
              return new Customer(id, name, "", "", "", Customer.Delivery.PRINT);
            });
  }
}
