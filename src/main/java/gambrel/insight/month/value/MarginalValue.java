package gambrel.insight.month.value;

import gambrel.insight.month.figures.ItemValues;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.Products;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a little more weight in one cut is worth compared with the same weight in another: the
 * difference of their values. A cut is compared with mince, with dice and with its neighbour, the
 * next part of the tree with the same parent. Both must have been packed and have a value.
 *
 * @param species the species
 * @param cut the part that has the value
 * @param packed its packed weight
 * @param value money in the major unit for a unit of weight
 * @param overMince its value less the value of mince; empty if mince was not packed
 * @param overDice its value less the value of dice; empty if dice was not packed
 * @param beside its neighbour; empty if it has none
 * @param overBeside its value less that of its neighbour
 */
public record MarginalValue(
    Species species,
    Item cut,
    Weight packed,
    BigFraction value,
    Optional<BigFraction> overMince,
    Optional<BigFraction> overDice,
    Optional<Item> beside,
    Optional<BigFraction> overBeside) {

  private boolean isCompared() {
    return overMince.isPresent() || overDice.isPresent() || overBeside.isPresent();
  }

  /** The cuts that some bodies were packed as, at {@code values}, by species in tree order. */
  public static List<MarginalValue> of(Collection<MonthBody> bodies, ItemValues values) {
    var lines = new ArrayList<MarginalValue>();
    for (var species : Species.values()) {
      var own = MonthBody.of(species, bodies);
      if (!own.isEmpty()) {
        var tree = own.get(0).balance().weighings().tree();
        var packed = packed(tree, own, values);
        packed.keySet().stream()
            .filter(cut -> !cut.id().equals(CutTree.MINCE) && !cut.id().equals(CutTree.DICE))
            .map(cut -> of(species, tree, cut, packed, values))
            .filter(MarginalValue::isCompared)
            .forEach(lines::add);
      }
    }
    return lines;
  }

  private static MarginalValue of(
      Species species, CutTree tree, Item cut, Map<Item, Weight> packed, ItemValues values) {
    var beside =
        packed.keySet().stream()
            .filter(other -> other.parent().equals(cut.parent()))
            .filter(other -> !cut.parent().equals(CutTree.ROOT))
            .filter(other -> tree.order(other.id()) > tree.order(cut.id()))
            .findFirst();
    var value = values.of(tree, cut.id()).orElseThrow();
    Function<Item, Optional<BigFraction>> over =
        other -> values.of(tree, other.id()).map(value::subtract);
    return new MarginalValue(
        species,
        cut,
        packed.get(cut),
        value,
        tree.find(CutTree.MINCE).filter(packed::containsKey).flatMap(over),
        tree.find(CutTree.DICE).filter(packed::containsKey).flatMap(over),
        beside,
        beside.flatMap(over));
  }

  /** The packed weight by the part whose value it has, in tree order. */
  private static Map<Item, Weight> packed(CutTree tree, List<MonthBody> bodies, ItemValues values) {
    var packed = new TreeMap<Item, Weight>(Comparator.comparingInt(item -> tree.order(item.id())));
    for (var body : bodies) {
      body.balance().weighings().out().stream()
          .filter(weighing -> Products.isFood(body.balance(), weighing))
          .forEach(
              weighing ->
                  values
                      .ofProduct(tree, weighing.item())
                      .ifPresent(part -> packed.merge(part, weighing.net(), Weight::plus)));
    }
    return packed;
  }
}
