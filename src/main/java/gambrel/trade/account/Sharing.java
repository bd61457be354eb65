package gambrel.trade.account;

import gambrel.trade.account.Entitlement.BatchPart;
import gambrel.trade.account.Entitlement.Line;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Division;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
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
    var customers = new HashSet<>(owners.keySet());
    items.values().forEach(packs -> customers.addAll(packs.outright.keySet()));
    var entitlements = new TreeMap<String, Entitlement>(ByteOrder.IDS);
    for (String customer : customers) {
      var share = owners.getOrDefault(customer, BigFraction.ZERO);
      var lines = items.keySet().stream().flatMap(item -> line(item, customer).stream()).toList();
      entitlements.put(customer, new Entitlement(customer, share, lines, batchParts(customer)));
    }
    return entitlements;
  }

  private void collectPacks() {
    boolean uncut = !balance.body().isCut();
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

  /** A customer's part of an item; empty if there is none. */
  private Optional<Line> line(String item, String customer) {
    var packs = items.get(item);
    var outright = packs.outright.getOrDefault(customer, List.of());
    boolean nothingShared = packs.shared.isEmpty() && packs.whole.isEmpty();
    boolean owns = owners.containsKey(customer) && !nothingShared;
    if (outright.isEmpty() && !owns) {
      return Optional.empty();
    }
    var kind = balance.weighings().tree().find(item).orElseThrow().kind();
    var own = Weight.ofThousandths(Weighing.total(outright).thousandths());
    var shared = packs.whole.orElseGet(() -> Weighing.total(packs.shared));
    var weight = own.plus(partOf(shared, customer));
    return Optional.of(new Line(item, kind, weight, count(customer, packs, outright), own));
  }

  /** The number of a customer's packs; empty where a part of the weight is a share. */
  private Optional<Integer> count(String customer, ItemPacks packs, List<Weighing> outright) {
    boolean sole = BigFraction.ONE.equals(owners.get(customer));
    boolean shares = owners.containsKey(customer) && !packs.shared.isEmpty() && !sole;
    return packs.whole.isPresent() || shares
        ? Optional.empty()
        : Optional.of(outright.size() + (sole ? packs.shared.size() : 0));
  }

  /** A customer's part of a weight that is divided, in whole thousandths. */
  private Weight partOf(Weight total, String customer) {
    var parts = Division.divide(total.thousandths(), owners);
    return Weight.ofThousandths(parts.getOrDefault(customer, 0L));
  }

  private List<BatchPart> batchParts(String customer) {
    var body = balance.body();
    return balance.batches().stream()
        .filter(batch -> body.isCut() && owners.containsKey(customer))
        .filter(batch -> !batch.isOpen())
        .map(
            batch ->
                new BatchPart(
                    batch.batch().id(),
                    partOf(batch.partOf(body.id()), customer),
                    partOf(batch.addedOutOf(body.id()), customer)))
        .toList();
  }

  /** The packs of one item. */
  private static final class ItemPacks {
    private final List<Weighing> shared = new ArrayList<>();
    private final Map<String, List<Weighing>> outright = new TreeMap<>(ByteOrder.IDS);
    private Optional<Weight> whole = Optional.empty();
  }
}
