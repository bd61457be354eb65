package gambrel.insight.month.value;

import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Products;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.insight.month.value.CutChoice.Cut;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.PieceBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the pieces that a shop cut in more than one way. The way of a body is the set of parts
 * directly under the piece of which it has end products that are food, or the piece itself. The
 * value of a way is the worth of all end products under the piece, at one day's values, over the
 * piece's weight on the block. If the piece was not weighed there, it is over the body's weight
 * into the boning room, so that pieces sold on the bone and boned out can be compared.
 */
public final class CutChoices {
  private final ItemValues values;

  /** Cuts are valued at {@code values}. */
  public CutChoices(ItemValues values) {
    this.values = values;
  }

  /** The bodies that were cut in each way, at least two ways. */
  private record Ways(
      Species species, Item piece, boolean perPiece, SortedMap<String, List<Cut>> cuts) {
    /** How many pairs of ways there are: any of them might be the one compared. */
    int pairs() {
      return cuts.size() * (cuts.size() - 1) / 2;
    }
  }

  /** The choices among some bodies, by species in tree order. */
  public List<CutChoice> of(Collection<MonthBody> bodies) {
    var found = new ArrayList<Ways>();
    for (var species : Species.values()) {
      var own = MonthBody.of(species, bodies);
      if (!own.isEmpty()) {
        for (var item : tree(own.get(0)).items()) {
          ways(species, item, true, own)
              .or(() -> ways(species, item, false, own))
              .ifPresent(found::add);
        }
      }
    }
    int comparisons = found.stream().mapToInt(Ways::pairs).sum();
    return found.stream().map(ways -> compared(ways, comparisons)).toList();
  }

  private static CutTree tree(MonthBody body) {
    return body.balance().weighings().tree();
  }

  /**
   * The ways that enough bodies were cut in; empty if there are fewer than two. Without the weights
   * of the piece itself, one way must be on the bone and another off it: only bone differs then,
   * since the trim of all pieces is weighed together.
   */
  private Optional<Ways> ways(
      Species species, Item piece, boolean perPiece, List<MonthBody> bodies) {
    TreeMap<String, List<Cut>> byWay =
        bodies.stream()
            .flatMap(body -> cut(piece, perPiece, body).stream())
            .collect(Collectors.groupingBy(Cut::way, TreeMap::new, Collectors.toList()));
    byWay.values().removeIf(cuts -> cuts.size() < CutChoice.FEWEST);
    boolean isChoice =
        byWay.size() > 1
            && (perPiece
                || byWay.values().stream().map(CutChoices::isOnBone).distinct().count() > 1);
    return isChoice ? Optional.of(new Ways(species, piece, perPiece, byWay)) : Optional.empty();
  }

  private static boolean isOnBone(List<Cut> cutAlike) {
    var first = cutAlike.get(0);
    return Stream.of(first.way().split(" "))
        .anyMatch(item -> tree(first.body()).facts(item).isOnBone());
  }

  /** What a body's piece was cut into; empty if a weight or a value is unknown. */
  private Optional<Cut> cut(Item piece, boolean perPiece, MonthBody body) {
    var made = Optional.ofNullable(body.choices().get(piece.id()));
    return made.flatMap(
        m ->
            (perPiece ? block(body.balance(), piece) : body.balance().boning())
                .filter(base -> !base.isZero())
                .flatMap(
                    base ->
                        Products.worth(m.products(), tree(body), values)
                            .map(worth -> new Cut(body, m.way(), worth, base))));
  }

  private static Optional<Weight> block(BodyBalance body, Item piece) {
    return body.pieces().stream()
        .filter(p -> p.item().equals(piece.id()))
        .findFirst()
        .map(PieceBalance::block);
  }

  private static CutChoice compared(Ways ways, int comparisons) {
    var best =
        ways.cuts().values().stream().max(Comparator.comparing(CutChoices::rate)).orElseThrow();
    var all =
        ways.cuts().values().stream()
            .map(cuts -> way(cuts, best, comparisons))
            .sorted(Comparator.comparing(CutChoice.Way::value).reversed())
            .toList();
    return new CutChoice(ways.species(), ways.piece(), ways.perPiece(), all);
  }

  private static CutChoice.Way way(List<Cut> cuts, List<Cut> best, int comparisons) {
    String way = cuts.get(0).way();
    var tree = tree(cuts.get(0).body());
    var samples = Stream.concat(cuts.stream(), best.stream()).map(CutChoices::sample).toList();
    return new CutChoice.Way(
        Stream.of(way.split(" ")).flatMap(id -> tree.find(id).stream()).toList(),
        cuts,
        rate(cuts),
        Spread.of(cuts.stream().map(Cut::rate).toList()).orElseThrow(),
        cuts == best ? Optional.empty() : GroupComparison.of(samples, way, comparisons));
  }

  private static Sample sample(Cut cut) {
    var body = cut.body().body();
    return new Sample(body.id(), body.category(), cut.way(), cut.rate().doubleValue());
  }

  private static BigFraction rate(List<Cut> cuts) {
    var worth = cuts.stream().map(Cut::worth).reduce(BigFraction.ZERO, BigFraction::add);
    return worth.divide(Weight.sum(cuts.stream().map(Cut::base).toList()).fraction());
  }
}
