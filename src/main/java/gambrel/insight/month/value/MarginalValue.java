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
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a little more weight in one cut is worth compared with the same weight in another: the
 * difference of their values. A cut is compared with mince, with dice and with its neighbour, the
 * next part of the tree with the same parent. Both must have been packed and have a value.
 */
public final class MarginalValue {
  private final ItemValues values;

  /** Cuts are valued at {@code values}. */
  public MarginalValue(ItemValues values) {
    this.values = values;
  }

  /**
   * A cut.
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
  public record Line(
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
  }

  /** The lines of the cuts that some bodies were packed as, by species in tree order. */
  public List<Line> of(Collection<MonthBody> bodies) {
    var lines = new ArrayList<Line>();
    for (var species : Species.values()) {
      var own = MonthBody.of(species, bodies);
      if (!own.isEmpty()) {
        var tree = own.get(0).balance().weighings().tree();
        var packed = packed(tree, own);
        packed.keySet().stream()
            .filter(cut -> !cut.id().equals(CutTree.MINCE) && !cut.id().equals(CutTree.DICE))
            .map(cut -> line(species, tree, cut, packed))
            .filter(Line::isCompared)
            .forEach(lines::add);
      }
    }
    return lines;
  }

  private Line line(Species species, CutTree tree, Item cut, Map<Item, Weight> packed) {
    var beside =
        packed.keySet().stream()
            .filter(other -> other.parent().equals(cut.parent()))
            .filter(other -> !cut.parent().equals(CutTree.ROOT))
            .filter(other -> tree.order(other.id()) > tree.order(cut.id()))
            .findFirst();
    var value = values.of(tree, cut.id()).orElseThrow();
    return new Line(
        species,
        cut,
        packed.get(cut),
        value,
        over(value, tree.find(CutTree.MINCE).filter(packed::containsKey), tree),
        over(value, tree.find(CutTree.DICE).filter(packed::containsKey), tree),
        beside,
        over(value, beside, tree));
  }

  private Optional<BigFraction> over(BigFraction value, Optional<Item> other, CutTree tree) {
    return other.flatMap(item -> values.of(tree, item.id())).map(value::subtract);
  }

  /** The packed weight by the part whose value it has, in tree order. */
  private Map<Item, Weight> packed(CutTree tree, List<MonthBody> bodies) {
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
