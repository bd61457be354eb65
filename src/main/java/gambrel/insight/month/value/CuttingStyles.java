package gambrel.insight.month.value;

import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.insight.month.value.CutChoices.Cut;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The bodies that were cut in each of a piece's ways.
 *
 * @param cuts by way, at least two
 */
record CuttingStyles(
    Species species, Item piece, boolean perPiece, SortedMap<String, List<Cut>> cuts) {

  /**
   * The ways that enough bodies were cut in; empty where there is no choice. Without the piece's
   * own weight, only ways on and off the bone are a choice.
   */
  static Optional<CuttingStyles> of(Species species, Item piece, boolean perPiece, List<Cut> cuts) {
    TreeMap<String, List<Cut>> byWay =
        cuts.stream().collect(Collectors.groupingBy(Cut::way, TreeMap::new, Collectors.toList()));
    byWay.values().removeIf(some -> some.size() < CutChoice.FEWEST);
    boolean choice = byWay.size() > 1 && (perPiece || areOnAndOffTheBone(byWay));
    return choice
        ? Optional.of(new CuttingStyles(species, piece, perPiece, byWay))
        : Optional.empty();
  }

  /** Without a block weighing only bone differs: the trim of the piece lies in a common tub. */
  private static boolean areOnAndOffTheBone(SortedMap<String, List<Cut>> byWay) {
    return byWay.values().stream().map(CuttingStyles::isOnTheBone).distinct().count() == 2;
  }

  private static boolean isOnTheBone(List<Cut> cutAlike) {
    var first = cutAlike.get(0);
    var tree = first.account().balance().weighings().tree();
    return Stream.of(first.way().split(" ")).anyMatch(item -> tree.facts(item).isOnBone());
  }

  /** Any way might have come out best against any other. */
  int pairs() {
    return cuts.size() * (cuts.size() - 1) / 2;
  }

  /** Held against the best of them, as one of so many comparisons. */
  CutChoice compared(int comparisons) {
    String best =
        cuts.entrySet().stream()
            .max(Comparator.comparing((Map.Entry<String, List<Cut>> e) -> rate(e.getValue())))
            .orElseThrow()
            .getKey();
    var ways =
        cuts.keySet().stream()
            .map(way -> way(way, best, comparisons))
            .sorted(Comparator.comparing(CutChoice.Way::value).reversed())
            .toList();
    return new CutChoice(species, piece, perPiece, ways);
  }

  private CutChoice.Way way(String way, String best, int comparisons) {
    var own = cuts.get(way);
    var tree = own.get(0).account().balance().weighings().tree();
    var toBest =
        way.equals(best)
            ? Optional.<GroupComparison.Difference>empty()
            : GroupComparison.of(samples(own, cuts.get(best)), way, comparisons);
    return new CutChoice.Way(
        items(tree, way),
        own.size(),
        rate(own),
        Spread.of(own.stream().map(Cut::rate).toList()).orElseThrow(),
        toBest);
  }

  private static List<Item> items(CutTree tree, String way) {
    return Stream.of(way.split(" ")).flatMap(id -> tree.find(id).stream()).toList();
  }

  private static List<Sample> samples(List<Cut> some, List<Cut> best) {
    return Stream.concat(some.stream(), best.stream()).map(CuttingStyles::sample).toList();
  }

  private static Sample sample(Cut cut) {
    var body = cut.account().body();
    return new Sample(body.id(), body.category(), cut.way(), cut.rate().doubleValue());
  }

  private static BigFraction rate(List<Cut> cuts) {
    var worth = cuts.stream().map(Cut::worth).reduce(BigFraction.ZERO, BigFraction::add);
    var base = Weight.sum(cuts.stream().map(Cut::base).toList());
    return worth.divide(base.fraction());
  }
}
