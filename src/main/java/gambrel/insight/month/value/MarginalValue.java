package gambrel.insight.month.value;

import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Products;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
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
  public List<Line> of(Collection<MonthBody> accounts) {
    var lines = new ArrayList<Line>();
    for (var species : Species.values()) {
      var own = MonthBody.of(species, accounts);
      if (!own.isEmpty()) {
        lines.addAll(of(species, own));
      }
    }
    return lines;
  }

  private List<Line> of(Species species, List<MonthBody> accounts) {
    var tree = accounts.get(0).balance().weighings().tree();
    var packed = packed(tree, accounts);
    var sold = new LinkedHashMap<Item, BigFraction>();
    packed.keySet().forEach(cut -> sold.put(cut, values.of(tree, cut.id()).orElseThrow()));
    var lines = new ArrayList<Line>();
    for (var cut : sold.keySet()) {
      if (cut.id().equals(CutTree.MINCE) || cut.id().equals(CutTree.DICE)) {
        continue;
      }
      var beside = beside(tree, cut, sold);
      lines.add(
          new Line(
              species,
              cut,
              packed.get(cut),
              sold.get(cut),
              over(cut, tree.find(CutTree.MINCE), sold),
              over(cut, tree.find(CutTree.DICE), sold),
              beside,
              over(cut, beside, sold)));
    }
    return lines.stream().filter(Line::isCompared).toList();
  }

  /** The packed weight by the part whose value it has, in tree order. */
  private Map<Item, Weight> packed(CutTree tree, List<MonthBody> accounts) {
    var packed = new TreeMap<Item, Weight>(Comparator.comparingInt(item -> tree.order(item.id())));
    for (var account : accounts) {
      for (var weighing : account.balance().weighings().out()) {
        if (Products.isFood(account.balance(), weighing)) {
          valued(tree, weighing)
              .ifPresent(part -> packed.merge(part, weighing.net(), Weight::plus));
        }
      }
    }
    return packed;
  }

  /** The part whose value an item has; for trim without a value that is mince. */
  private Optional<Item> valued(CutTree tree, Weighing weighing) {
    var own = values.carrier(tree, weighing.item());
    boolean trim = tree.find(weighing.item()).filter(i -> i.kind() == Kind.TRIM).isPresent();
    return own.isEmpty() && trim ? values.carrier(tree, CutTree.MINCE) : own;
  }

  /** The next packed part of the tree that has the same parent. */
  private static Optional<Item> beside(CutTree tree, Item cut, Map<Item, BigFraction> sold) {
    return sold.keySet().stream()
        .filter(other -> other.parent().equals(cut.parent()) && !cut.parent().equals(CutTree.ROOT))
        .filter(other -> tree.order(other.id()) > tree.order(cut.id()))
        .findFirst();
  }

  private static Optional<BigFraction> over(
      Item cut, Optional<Item> other, Map<Item, BigFraction> sold) {
    return other.map(sold::get).map(value -> sold.get(cut).subtract(value));
  }
}
