package gambrel.month.value;

import gambrel.balance.BodyBalance;
import gambrel.balance.Drawn;
import gambrel.balance.PieceBalance;
import gambrel.cuts.CutTree;
import gambrel.cuts.Item;
import gambrel.cuts.Kind;
import gambrel.cuts.Species;
import gambrel.measure.Weight;
import gambrel.month.ItemValues;
import gambrel.month.MonthRecords;
import gambrel.reckoning.BodyAccount;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the pieces that a shop cut in more than one way. The way of a body is the set of parts
 * directly under the piece of which it has end products that are food, or the piece itself. What a
 * way realised is the worth of all end products under the piece, at one day's values, over the
 * piece's weight on the block. Where it was not weighed there, it is over the body's weight into the
 * boning room, which makes pieces sold on the bone and boned out comparable.
 */
public final class CutChoices {
  private static final Drawn<MonthRecords, List<CutChoice>> LATELY =
      new Drawn<>(r -> new CutChoices(r.rail().items()).of(Lately.settled(r)));

  private static final Drawn<BodyBalance, Map<String, Made>> MADE = new Drawn<>(CutChoices::made);

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
  record Cut(BodyAccount account, String way, BigFraction worth, Weight base) {
    BigFraction rate() {
      return worth.divide(base.fraction());
    }
  }

  /** What a body's piece was made into, whatever that is worth. */
  private record Made(String way, List<Products.Product> products) {}

  /** The choices of a month and of the twelve before it, at the month's values. */
  public static List<CutChoice> lately(MonthRecords records) {
    return LATELY.of(records);
  }

  /** The choices among some bodies, by species in tree order. */
  public List<CutChoice> of(Collection<BodyAccount> accounts) {
    var open = new ArrayList<Ways>();
    for (var species : Species.values()) {
      var own = accounts.stream().filter(a -> a.body().species() == species).toList();
      if (!own.isEmpty()) {
        var tree = own.get(0).balance().weighings().tree();
        var makers = makers(own);
        tree.items().stream()
            .filter(item -> makers.containsKey(item.id()))
            .filter(item -> makers.get(item.id()).inSeveralWays())
            .forEach(
                item -> ways(species, item, makers.get(item.id()).bodies()).ifPresent(open::add));
      }
    }
    int comparisons = open.stream().mapToInt(Ways::pairs).sum();
    return open.stream().map(ways -> ways.compared(comparisons)).toList();
  }

  /** The bodies by the pieces of which they have something. */
  private static Map<String, Makers> makers(List<BodyAccount> accounts) {
    var makers = new HashMap<String, Makers>();
    for (var account : accounts) {
      MADE.of(account.balance())
          .forEach(
              (piece, made) ->
                  makers.computeIfAbsent(piece, p -> new Makers()).add(account, made.way()));
    }
    return makers;
  }

  /** Who made something of a piece, and how many in which way: what it is worth is asked later. */
  private static final class Makers {
    private final List<BodyAccount> bodies = new ArrayList<>();
    private final Map<String, Integer> ways = new HashMap<>();

    void add(BodyAccount account, String way) {
      bodies.add(account);
      ways.merge(way, 1, Integer::sum);
    }

    List<BodyAccount> bodies() {
      return bodies;
    }

    boolean inSeveralWays() {
      return ways.values().stream().filter(n -> n >= CutChoice.FEWEST).count() > 1;
    }
  }

  private static boolean isChoice(CutTree tree, Item item) {
    return (item.kind() == Kind.PIECE || item.kind() == Kind.MEAT)
        && !tree.children(item.id()).isEmpty();
  }

  private Optional<Ways> ways(Species species, Item piece, List<BodyAccount> accounts) {
    return Ways.of(species, piece, true, cuts(piece, true, accounts))
        .or(() -> Ways.of(species, piece, false, cuts(piece, false, accounts)));
  }

  /** What each of the bodies made of a piece, so far as that is known. */
  List<Cut> cuts(Item piece, boolean perPiece, Collection<BodyAccount> accounts) {
    return accounts.stream().flatMap(a -> cut(piece, perPiece, a).stream()).toList();
  }

  private Optional<Cut> cut(Item piece, boolean perPiece, BodyAccount account) {
    var body = account.balance();
    var base = (perPiece ? block(body, piece) : body.boning()).filter(w -> !w.isZero());
    if (base.isEmpty()) {
      return Optional.empty();
    }
    return Optional.ofNullable(MADE.of(body).get(piece.id()))
        .flatMap(
            made ->
                new Products(body, values)
                    .worth(made.products())
                    .map(worth -> new Cut(account, made.way(), worth, base.get())));
  }

  private static Map<String, Made> made(BodyBalance body) {
    var made = new HashMap<String, Made>();
    var products = Products.of(body);
    var tree = body.weighings().tree();
    var pieces =
        products.stream()
            .filter(product -> tree.find(product.item()).isPresent())
            .flatMap(product -> tree.path(product.item()).stream())
            .filter(item -> isChoice(tree, item))
            .distinct()
            .toList();
    for (var piece : pieces) {
      var under =
          products.stream().filter(p -> tree.isUnder(p.item(), piece.id())).toList();
      String way = way(under, piece, tree);
      if (!way.isEmpty()) {
        made.put(piece.id(), new Made(way, under));
      }
    }
    return made;
  }

  private static String way(List<Products.Product> under, Item piece, CutTree tree) {
    return under.stream()
        .filter(Products.Product::food)
        .map(product -> part(tree, piece, product.item()))
        .distinct()
        .sorted(Comparator.comparingInt(tree::order))
        .collect(Collectors.joining(" "));
  }

  /** The part directly under the piece that an item comes from; the piece for itself. */
  private static String part(CutTree tree, Item piece, String item) {
    var path = tree.path(item);
    int at = path.indexOf(piece);
    return path.get(Math.min(at + 1, path.size() - 1)).id();
  }

  private static Optional<Weight> block(BodyBalance body, Item piece) {
    return body.pieces().stream()
        .filter(p -> p.item().equals(piece.id()))
        .findFirst()
        .map(PieceBalance::block);
  }
}
