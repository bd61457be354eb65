package gambrel.insight.month.value;

import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.ItemValues;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Cuts of the shop's own bodies that were packed although trim is worth more. A cut on the bone is
 * left out, since its bone is not told apart. What a customer orders is the customer's choice.
 */
public final class BelowTrim {
  private BelowTrim() {}

  /**
   * The cuts of a month, by species in tree order.
   *
   * @param isDue whether to tell of all; otherwise of those that were not packed in the twelve
   *     months before, see {@link CutChoice#isDue}
   */
  public static List<Finding> findings(MonthRecords records, boolean isDue) {
    return records.settled().stream()
        .map(bodies -> bodies.map(Ownership.OWN::of))
        .flatMap(bodies -> of(records, bodies, isDue))
        .toList();
  }

  private static Stream<Finding> of(
      MonthRecords records, Compared<List<MonthBody>> bodies, boolean isDue) {
    var tree = records.night().shop().cuts().of(bodies.species());
    return tree.items().stream()
        .filter(item -> item.kind() == Kind.MEAT && !tree.facts(item.id()).isOnBone())
        .filter(item -> isPacked(item, bodies.month()))
        .filter(item -> isDue || !isPacked(item, bodies.before()))
        .filter(item -> !item.id().equals(CutTree.MINCE))
        .flatMap(
            item ->
                below(records.values(), tree, item).stream()
                    .map(less -> finding(records, bodies, tree, item, less)));
  }

  private static boolean isPacked(Item item, Collection<MonthBody> bodies) {
    return bodies.stream().anyMatch(body -> body.packs().containsKey(item.id()));
  }

  /** By how much a unit of weight of the cut is worth less than trim; empty if it is not. */
  private static Optional<BigFraction> below(ItemValues values, CutTree tree, Item item) {
    var trim = values.ofProduct(tree, CutTree.TRIM).flatMap(of -> values.of(tree, of.id()));
    return values
        .of(tree, item.id())
        .flatMap(own -> trim.map(worth -> worth.subtract(own)))
        .filter(less -> less.signum() > 0);
  }

  private static Finding finding(
      MonthRecords records,
      Compared<List<MonthBody>> bodies,
      CutTree tree,
      Item item,
      BigFraction less) {
    var packed =
        bodies.month().stream().filter(body -> body.packs().containsKey(item.id())).toList();
    var weights = Ownership.weights(packed, body -> Optional.of(body.packs().get(item.id())));
    var value = records.values().of(tree, item.id()).orElseThrow();
    return Finding.certain(
        Finding.Kind.BELOW_TRIM,
        "",
        MonthBody.ids(packed),
        Map.of(
            "piece", new Evidence.Cuts(bodies.species(), List.of(item)),
            "value", new Evidence.Rate(value),
            "trim", new Evidence.Rate(value.add(less)),
            "weight", new Evidence.Borne(weights)),
        Finding.Cost.of(weights, Optional.of(less), records.settings().currency()));
  }
}
