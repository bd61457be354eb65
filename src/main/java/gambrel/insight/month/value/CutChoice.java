package gambrel.insight.month.value;

import gambrel.insight.month.figures.BodyRate;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.insight.month.figures.ItemValues;
import gambrel.insight.month.figures.MonthBodies;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.Products;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.PieceBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A piece that the shop cut in more than one way. The way of a body is the set of parts directly
 * under the piece of which it has end products that are food, or the piece itself. The value of a
 * way is the worth of all end products under the piece, at one day's values, over the piece's
 * weight on the block. If the piece was not weighed there, it is over the body's weight into the
 * boning room, so that pieces sold on the bone and boned out can be compared.
 *
 * @param species the species
 * @param piece the piece
 * @param perPiece whether values are for a unit of the piece's weight on the block; otherwise they
 *     are for a unit of the body's weight into the boning room
 * @param ways best first
 */
public record CutChoice(Species species, Item piece, boolean perPiece, List<Way> ways) {
  /** Ways of fewer bodies are left out. */
  public static final int FEWEST = 3;

  /**
   * One way to cut the piece.
   *
   * @param items what the piece was packed as: parts directly under it, or itself
   * @param cuts the bodies that were cut so, with the worth of their pieces
   * @param toBest way less best way; empty for the best way itself and where bodies are too few
   */
  public record Way(List<Item> items, List<BodyRate> cuts, Optional<Difference> toBest) {
    /** Money in the major unit for a unit of weight, of all bodies together. */
    public BigFraction value() {
      return BodyRate.of(cuts).orElseThrow();
    }

    private boolean isOnBone(CutTree tree) {
      return items.stream().anyMatch(item -> tree.facts(item.id()).isOnBone());
    }
  }

  /** The choices among some bodies, by species in tree order. */
  public static List<CutChoice> of(Collection<MonthBody> bodies, ItemValues values) {
    var found = new ArrayList<CutChoice>();
    for (var species : Species.values()) {
      var own = MonthBody.of(species, bodies);
      if (!own.isEmpty()) {
        for (var piece : tree(own.get(0)).items()) {
          of(piece, true, own, values)
              .or(() -> of(piece, false, own, values))
              .ifPresent(found::add);
        }
      }
    }
    // Any pair of ways might be the one compared.
    int pairs = found.stream().mapToInt(c -> c.ways.size() * (c.ways.size() - 1) / 2).sum();
    return found.stream().map(choice -> choice.compared(pairs)).toList();
  }

  private static CutTree tree(MonthBody body) {
    return body.balance().weighings().tree();
  }

  /**
   * The ways that enough bodies were cut in; empty if there are fewer than two. Without the weights
   * of the piece itself, one way must be on the bone and another off it: only bone differs then,
   * since the trim of all pieces is weighed together.
   */
  private static Optional<CutChoice> of(
      Item piece, boolean perPiece, List<MonthBody> bodies, ItemValues values) {
    var tree = tree(bodies.get(0));
    var cut = bodies.stream().filter(body -> body.choices().containsKey(piece.id()));
    var byWay = new TreeMap<>(Groups.inOrder(cut, body -> body.choices().get(piece.id()).way()));
    byWay.values().removeIf(some -> some.size() < FEWEST);
    if (byWay.size() < 2) {
      return Optional.empty();
    }
    var ways = new ArrayList<Way>();
    byWay.forEach(
        (way, some) -> {
          var cuts =
              some.stream().flatMap(body -> cut(piece, perPiece, body, values).stream()).toList();
          ways.add(new Way(items(way, tree), cuts, Optional.empty()));
        });
    ways.removeIf(way -> way.cuts().size() < FEWEST);
    ways.sort(Comparator.comparing(Way::value).reversed());
    boolean isChoice =
        ways.size() > 1
            && (perPiece || ways.stream().map(way -> way.isOnBone(tree)).distinct().count() > 1);
    return Optional.of(new CutChoice(bodies.get(0).species(), piece, perPiece, ways))
        .filter(choice -> isChoice);
  }

  private static List<Item> items(String way, CutTree tree) {
    return Stream.of(way.split(" ")).flatMap(id -> tree.find(id).stream()).toList();
  }

  /** The worth of a body's piece; empty if a weight or a value is unknown. */
  private static Optional<BodyRate> cut(
      Item piece, boolean perPiece, MonthBody body, ItemValues values) {
    var base = perPiece ? block(body.balance(), piece) : body.balance().boning();
    return base.filter(weight -> !weight.isZero())
        .map(weight -> body.choices().get(piece.id()).products())
        .flatMap(products -> Products.worth(products, tree(body), values))
        .map(worth -> new BodyRate(body, worth, base.orElseThrow().fraction()));
  }

  private static Optional<Weight> block(BodyBalance body, Item piece) {
    return body.pieces().stream()
        .filter(p -> p.item().equals(piece.id()))
        .findFirst()
        .map(PieceBalance::block);
  }

  private CutChoice compared(int comparisons) {
    var compared = ways.stream().map(way -> way == best() ? way : toBest(way, comparisons));
    return new CutChoice(species, piece, perPiece, compared.toList());
  }

  private Way toBest(Way way, int comparisons) {
    var difference =
        GroupComparison.difference(
            new Compared<>(species, way.cuts(), best().cuts()),
            cut -> Optional.of(cut.rate()),
            cut -> cut.body().body().category(),
            comparisons);
    return new Way(way.items(), way.cuts(), difference);
  }

  /** The best way. */
  public Way best() {
    return ways.get(0);
  }

  /** The value of each way, best first, with the interval of its difference to the best way. */
  public List<MonthFigure> figures() {
    var name = perPiece ? FigureName.CUT_WORTH_OF_PIECE : FigureName.CUT_WORTH_OF_BODY;
    return ways.stream()
        .map(
            way ->
                BodyRate.figure(
                        name,
                        species,
                        new MonthFigure.Way(piece, way.items()),
                        way.cuts(),
                        List.of())
                    .with(way.toBest().map(MonthFigure.Interval::of)))
        .toList();
  }

  /**
   * The ways in which the shop cut own bodies of the month and that brought less than the best way,
   * beyond chance. What a customer orders is the customer's choice and no finding.
   */
  public Stream<Finding> findings(MonthRecords records) {
    var ids = Set.copyOf(MonthBody.ids(Ownership.OWN.of(records.bodies().settled())));
    return ways.stream()
        .flatMap(
            way -> {
              var own = way.cuts().stream().filter(cut -> ids.contains(cut.body().id())).toList();
              return way.toBest().stream()
                  .filter(difference -> difference.high() < 0 && !own.isEmpty())
                  .map(difference -> finding(records, way, own, difference.reversed()));
            });
  }

  /**
   * Whether all findings about values are due: at the end of a quarter, if a value changed in the
   * month, or if a piece was cut in a way in which none was cut in the twelve months before. Else
   * the month would only repeat an earlier one.
   */
  public static boolean isDue(MonthRecords records) {
    var month = records.month();
    var day = month.minusMonths(1).atEndOfMonth();
    var before = new ItemValues(records.night().shop().values(), day);
    return month.getMonthValue() % 3 == 0
        || !records.values().isSame(before)
        || !ways(records.baseline()).containsAll(ways(records.bodies()));
  }

  /** The ways in which the pieces of some months' bodies were cut. */
  private static Set<String> ways(MonthBodies months) {
    return months.settled().stream()
        .flatMap(
            body ->
                body.choices().entrySet().stream()
                    .map(of -> body.species() + " " + of.getKey() + " " + of.getValue().way()))
        .collect(Collectors.toSet());
  }

  private Finding finding(
      MonthRecords records, Way way, List<BodyRate> own, Difference bestLessWay) {
    var less = best().value().subtract(way.value());
    var missed = BodyRate.sum(own, BodyRate::weight).multiply(less);
    return Finding.likely(
        Finding.Kind.CUT_CHOICE,
        perPiece ? "piece" : "body",
        MonthBody.ids(own.stream().map(BodyRate::body).toList()),
        bestLessWay.evidence(
            List.of("difference", "bodies", "bodies_best"),
            Evidence.Rate::new,
            Map.of(
                "piece", new Evidence.Cuts(species, List.of(piece)),
                "best", new Evidence.Cuts(species, best().items()),
                "way", new Evidence.Cuts(species, way.items()),
                "less", new Evidence.Rate(less),
                "bodies_month", new Evidence.Count(own.size()))),
        Finding.Cost.ofShop(Money.of(missed, records.settings().currency())));
  }
}
