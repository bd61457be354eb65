package gambrel.insight.month.value;

import gambrel.insight.month.bodies.ItemValues;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.PieceBalance;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the pieces that a shop cut in more than one way. The way of a body is the set of parts
 * directly under the piece of which it has end products that are food, or the piece itself. What a
 * way realised is the worth of all end products under the piece, at one day's values, over the
 * piece's weight on the block. Where it was not weighed there, it is over the body's weight into
 * the boning room, which makes pieces sold on the bone and boned out comparable.
 */
public final class CutChoices {
  private final ItemValues values;

  /** At these values. */
  public CutChoices(ItemValues values) {
    this.values = values;
  }

  /**
   * One body's way with a piece.
   *
   * @param way the ids of the parts, joined by blanks
   * @param worth money in the major unit
   * @param base the weight that it is worth it on
   */
  record Cut(MonthBody account, String way, BigFraction worth, Weight base) {
    BigFraction rate() {
      return worth.divide(base.fraction());
    }
  }

  /** The choices among some bodies, by species in tree order. */
  public List<CutChoice> of(Collection<MonthBody> accounts) {
    var open = new ArrayList<CuttingStyles>();
    for (var species : Species.values()) {
      var own = accounts.stream().filter(a -> a.body().species() == species).toList();
      if (!own.isEmpty()) {
        var tree = own.get(0).balance().weighings().tree();
        var makers = makers(own);
        for (var item : tree.items()) {
          var bodies = makers.getOrDefault(item.id(), List.of());
          if (isInSeveralWays(item, bodies)) {
            ways(species, item, bodies).ifPresent(open::add);
          }
        }
      }
    }
    int comparisons = open.stream().mapToInt(CuttingStyles::pairs).sum();
    return open.stream().map(ways -> ways.compared(comparisons)).toList();
  }

  /** The bodies by the pieces of which they have something. */
  private static Map<String, List<MonthBody>> makers(List<MonthBody> bodies) {
    var makers = new HashMap<String, List<MonthBody>>();
    for (var body : bodies) {
      for (String piece : body.choices().keySet()) {
        makers.computeIfAbsent(piece, p -> new ArrayList<>()).add(body);
      }
    }
    return makers;
  }

  /** Whether enough bodies were cut in at least two ways: what these are worth is asked later. */
  private static boolean isInSeveralWays(Item piece, List<MonthBody> bodies) {
    var ways = new HashMap<String, Integer>();
    bodies.forEach(b -> ways.merge(b.choices().get(piece.id()).way(), 1, Integer::sum));
    return ways.values().stream().filter(n -> n >= CutChoice.FEWEST).count() > 1;
  }

  private Optional<CuttingStyles> ways(Species species, Item piece, List<MonthBody> accounts) {
    return CuttingStyles.of(species, piece, true, cuts(piece, true, accounts))
        .or(() -> CuttingStyles.of(species, piece, false, cuts(piece, false, accounts)));
  }

  /** What each of the bodies made of a piece, so far as that is known. */
  List<Cut> cuts(Item piece, boolean perPiece, Collection<MonthBody> accounts) {
    return accounts.stream().flatMap(a -> cut(piece, perPiece, a).stream()).toList();
  }

  private Optional<Cut> cut(Item piece, boolean perPiece, MonthBody account) {
    var body = account.balance();
    var base = (perPiece ? block(body, piece) : body.boning()).filter(w -> !w.isZero());
    if (base.isEmpty()) {
      return Optional.empty();
    }
    return Optional.ofNullable(account.choices().get(piece.id()))
        .flatMap(
            made ->
                Products.worth(made.products(), body.weighings().tree(), values)
                    .map(worth -> new Cut(account, made.way(), worth, base.get())));
  }

  private static Optional<Weight> block(BodyBalance body, Item piece) {
    return body.pieces().stream()
        .filter(p -> p.item().equals(piece.id()))
        .findFirst()
        .map(PieceBalance::block);
  }
}
