package gambrel.insight.month.value;

import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.ItemValues;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Products;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a little more weight in a cut is worth compared with the same weight as mince, or as
 * sausages where no mince was made: the difference of their values.
 *
 * @param species the species
 * @param cut the part that has the value
 * @param packed its packed weight
 * @param value money in the major unit for a unit of weight
 * @param instead mince or sausages
 * @param over the value less that of {@code instead}
 */
public record MarginalValue(
    Species species, Item cut, Weight packed, BigFraction value, Item instead, BigFraction over) {
  /** What the meat of a cut may become instead, the first that was made. */
  private static final List<String> INSTEAD = List.of(CutTree.MINCE, CutTree.SAUSAGES);

  /** The cuts that some bodies were packed as, at {@code values}, by species in tree order. */
  public static List<MarginalValue> of(Collection<MonthBody> bodies, ItemValues values) {
    var lines = new ArrayList<MarginalValue>();
    for (var species : Species.values()) {
      var own = MonthBody.of(species, bodies);
      if (!own.isEmpty()) {
        var tree = own.get(0).balance().weighings().tree();
        var packed = packed(tree, own, values);
        instead(tree, own, packed.keySet(), values)
            .ifPresent(item -> lines.addAll(of(species, tree, item, packed, values)));
      }
    }
    return lines;
  }

  private static List<MarginalValue> of(
      Species species, CutTree tree, Item instead, Map<Item, Weight> packed, ItemValues values) {
    var its = values.of(tree, instead.id()).orElseThrow();
    return packed.keySet().stream()
        .filter(cut -> cut.kind() != Kind.TRIM && !INSTEAD.contains(cut.id()))
        .map(
            cut -> {
              var value = values.of(tree, cut.id()).orElseThrow();
              return new MarginalValue(
                  species, cut, packed.get(cut), value, instead, value.subtract(its));
            })
        .toList();
  }

  /** Mince if it was packed, else sausages if a batch was packed as such; with a value. */
  private static Optional<Item> instead(
      CutTree tree, List<MonthBody> bodies, Set<Item> packed, ItemValues values) {
    var ofBatches =
        bodies.stream()
            .flatMap(body -> body.balance().batches().stream())
            .flatMap(batch -> batch.weighings().stream())
            .filter(weighing -> weighing.step() == Step.PACK)
            .map(weighing -> weighing.item());
    var made = Stream.concat(packed.stream().map(Item::id), ofBatches).toList();
    return INSTEAD.stream()
        .filter(item -> made.contains(item) && values.of(tree, item).isPresent())
        .findFirst()
        .flatMap(tree::find);
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

  /** What 100 g or 4 oz more on each cut earns, the cuts packed most first. */
  public static List<MonthFigure> figures(Collection<MarginalValue> values, WeightUnit unit) {
    var small = unit == WeightUnit.LB ? BigFraction.of(1, 4) : BigFraction.of(1, 10);
    return values.stream()
        .sorted(Comparator.comparing((MarginalValue line) -> line.packed()).reversed())
        .map(
            line ->
                MonthFigure.of(
                    FigureName.MORE_ON_CUT,
                    line.species(),
                    new MonthFigure.Way(line.cut(), List.of(line.instead())),
                    1,
                    Optional.of(line.over().multiply(small))))
        .toList();
  }
}
