package gambrel.trade.balance;

import gambrel.trade.cuts.SideLabels;
import gambrel.trade.measure.Groups;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The block weighings of one body, by piece. */
final class BlockWeighings {
  private final BodyWeighings body;
  private final Map<String, List<Weighing>> byItem;

  BlockWeighings(BodyWeighings body) {
    this.body = body;
    this.byItem = new TreeMap<>(Comparator.comparingInt(body.tree()::order));
    for (var weighing : body.of(Step.BLOCK)) {
      byItem.computeIfAbsent(weighing.item(), i -> new ArrayList<>()).add(weighing);
    }
  }

  /** The weighings of pieces with no weighed piece above them, earliest first. */
  List<Weighing> topmost() {
    return byItem.entrySet().stream()
        .filter(entry -> byItem.keySet().stream().noneMatch(i -> isAbove(i, entry.getKey())))
        .flatMap(entry -> entry.getValue().stream())
        .sorted(Weighing.BY_TIME)
        .toList();
  }

  /**
   * Whether {@code above} is a part above {@code item}. The tree has the primals of a left or right
   * quarter under the plain quarter, so a left quarter is above them too.
   */
  private boolean isAbove(String above, String item) {
    String plain = SideLabels.plain(above);
    boolean plainAbove = body.tree().isUnder(item, plain);
    return !item.equals(above)
        && !item.equals(plain)
        && (body.tree().isUnder(item, above) || plainAbove);
  }

  /**
   * The balance of every piece, in tree order.
   *
   * @param out packs, tubs into batches and bins of the body: no offal, no rail trim
   */
  List<PieceBalance> balances(List<Weighing> out, Uncertainty uncertainty) {
    boolean allInside = out.stream().allMatch(this::isInside);
    var balances = new ArrayList<PieceBalance>();
    byItem.forEach(
        (item, weighings) -> {
          var came = out.stream().filter(w -> body.tree().isUnder(w.item(), item)).toList();
          balances.add(
              new PieceBalance(
                  item,
                  Weighing.total(weighings),
                  allInside ? Optional.of(Weighing.total(came)) : Optional.empty(),
                  uncertainty.resolutionSquared(Groups.both(weighings, came)),
                  weighings));
        });
    return balances;
  }

  private boolean isInside(Weighing weighing) {
    return byItem.keySet().stream().anyMatch(i -> body.tree().isUnder(weighing.item(), i));
  }
}
