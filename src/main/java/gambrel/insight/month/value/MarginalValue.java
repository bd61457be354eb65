package gambrel.insight.month.value;

import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
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
 * What a little more on one cut is worth, when it might have gone to another: the difference of
 * their values. Only cuts that were packed and have a value are set against each other: a cut
 * against mince, against dice, and against the cut beside it, which is the next part of the tree
 * with the same parent.
 */
public final class MarginalValue {
  private final ItemValues values;

  /** At these values. */
  public MarginalValue(ItemValues values) {
    this.values = values;
  }

  /**
   * A cut.
   *
   * @param species of what
   * @param cut the part that carries the value
   * @param packed how much of it was packed
   * @param value money in the major unit for a unit of weight
   * @param overMince its value less that of mince
   * @param overDice its value less that of dice
   * @param beside the next cut beside it
   * @param overBeside its value less that of the cut beside it
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

    /** Whether it is set against anything. */
    boolean isCompared() {
      return overMince.isPresent() || overDice.isPresent() || overBeside.isPresent();
    }
  }

  /** The cuts that some bodies were packed as, by species in tree order. */
  public List<Line> of(Collection<MonthBody> accounts) {
    var lines = new ArrayList<Line>();
    for (var species : Species.values()) {
      var own = accounts.stream().filter(a -> a.body().species() == species).toList();
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

  /** What was packed, by the part whose value it has, in tree order. */
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

  /** The part whose value an item has; trim is mince. */
  private Optional<Item> valued(CutTree tree, Weighing weighing) {
    var own = values.carrier(tree, weighing.item());
    boolean trim = tree.find(weighing.item()).filter(i -> i.kind() == Kind.TRIM).isPresent();
    return own.isEmpty() && trim ? values.carrier(tree, CutTree.MINCE) : own;
  }

  /** The next part of the tree that has the same parent. */
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
