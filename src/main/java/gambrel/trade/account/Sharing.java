package gambrel.trade.account;

import gambrel.trade.account.Entitlement.BatchPart;
import gambrel.trade.account.Entitlement.Line;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Division;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Divides a body among its owners. A pack that names a customer goes to that customer. The other
 * packs are divided item by item, and each batch's meat part on its own.
 */
public final class Sharing {
  private final BodyBalance balance;
  private final Map<String, BigFraction> owners;
  private final Map<String, ItemPacks> items;

  private Sharing(BodyBalance balance) {
    this.balance = balance;
    this.owners = balance.body().owners();
    this.items = new TreeMap<>(Comparator.comparingInt(balance.weighings().tree()::order));
  }

  /** What each customer with a share or with packs gets, by id; the shop under its reserved id. */
  public static SortedMap<String, Entitlement> of(BodyBalance balance) {
    return new Sharing(balance).divide();
  }

  private SortedMap<String, Entitlement> divide() {
    collectPacks();
    addWholeBody();
    var customers = new TreeSet<String>(ByteOrder.IDS);
    customers.addAll(owners.keySet());
    items.values().forEach(packs -> customers.addAll(packs.outright.keySet()));
    var lines = new TreeMap<String, List<Line>>(ByteOrder.IDS);
    items.forEach((item, packs) -> divide(item, packs, customers, lines));
    var parts = batchParts();
    var entitlements = new TreeMap<String, Entitlement>(ByteOrder.IDS);
    for (String customer : customers) {
      entitlements.put(
          customer,
          new Entitlement(
              customer,
              owners.getOrDefault(customer, BigFraction.ZERO),
              lines.getOrDefault(customer, List.of()),
              parts.getOrDefault(customer, List.of())));
    }
    return entitlements;
  }

  private void collectPacks() {
    boolean uncut = balance.body().outcome() != Outcome.CUT;
    for (var pack : balance.weighings().of(Step.PACK)) {
      if (uncut && !balance.weighings().isOffal(pack)) {
        continue;
      }
      var packs = items.computeIfAbsent(pack.item(), i -> new ItemPacks());
      if (pack.customer().isEmpty()) {
        packs.shared.add(pack);
      } else {
        packs.outright.computeIfAbsent(pack.customer(), c -> new ArrayList<>()).add(pack);
      }
    }
  }

  /** Adds a body left whole as an item {@code carcase}. */
  private void addWholeBody() {
    if (balance.body().outcome() == Outcome.WHOLE && balance.outputs().isPresent()) {
      items.computeIfAbsent(CutTree.ROOT, i -> new ItemPacks()).whole = balance.boning();
    }
  }

  private void divide(
      String item, ItemPacks packs, TreeSet<String> customers, Map<String, List<Line>> lines) {
    long total = packs.whole.orElseGet(() -> Weighing.total(packs.shared)).thousandths();
    boolean nothingShared = packs.shared.isEmpty() && packs.whole.isEmpty();
    var parts = Division.divide(total, owners);
    for (String customer : customers) {
      var outright = packs.outright.getOrDefault(customer, List.of());
      boolean owns = owners.containsKey(customer) && !nothingShared;
      if (outright.isEmpty() && !owns) {
        continue;
      }
      var own = Weight.ofThousandths(Weighing.total(outright).thousandths());
      var part = Weight.ofThousandths(parts.getOrDefault(customer, 0L));
      lines
          .computeIfAbsent(customer, c -> new ArrayList<>())
          .add(new Line(item, kind(item), own.plus(part), count(customer, packs, outright), own));
    }
  }

  private Optional<Integer> count(String customer, ItemPacks packs, List<Weighing> outright) {
    boolean sole = BigFraction.ONE.equals(owners.get(customer));
    if (packs.whole.isPresent()) {
      return Optional.empty();
    }
    if (sole || packs.shared.isEmpty() || !owners.containsKey(customer)) {
      int shared = sole ? packs.shared.size() : 0;
      return Optional.of(outright.size() + shared);
    }
    return Optional.empty();
  }

  private Kind kind(String item) {
    return balance.weighings().tree().find(item).map(Item::kind).orElse(Kind.WASTE);
  }

  private Map<String, List<BatchPart>> batchParts() {
    var parts = new TreeMap<String, List<BatchPart>>(ByteOrder.IDS);
    if (balance.body().outcome() != Outcome.CUT) {
      return parts;
    }
    for (BatchBalance batch : balance.batches()) {
      var part = batch.partOf(balance.body().id());
      if (batch.isOpen()) {
        continue;
      }
      Division.divide(part.thousandths(), owners)
          .forEach(
              (customer, weight) ->
                  parts
                      .computeIfAbsent(customer, c -> new ArrayList<>())
                      .add(new BatchPart(batch.batch().id(), Weight.ofThousandths(weight))));
    }
    return parts;
  }

  /** The packs of one item. */
  private static final class ItemPacks {
    private final List<Weighing> shared = new ArrayList<>();
    private final Map<String, List<Weighing>> outright = new TreeMap<>(ByteOrder.IDS);
    private Optional<Weight> whole = Optional.empty();
  }
}
