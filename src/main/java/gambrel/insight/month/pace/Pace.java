package gambrel.insight.month.pace;

import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthFigure.Comparison;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.month.pace.BoningIntervals.Interval;
import gambrel.insight.month.pace.BoningIntervals.Piece;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How fast pieces were boned in a month and in the twelve months before.
 *
 * @param month the work of the month
 * @param before the work of the twelve months before
 */
public record Pace(BoningIntervals month, BoningIntervals before) {
  /** The pace of a month. */
  public static Pace of(MonthRecords records) {
    return new Pace(
        BoningIntervals.of(List.of(records.bodies())),
        BoningIntervals.of(records.baseline().months()));
  }

  private Pace where(Predicate<Interval> which) {
    return new Pace(month.where(which), before.where(which));
  }

  /** The pace of a species. */
  public Pace of(Species species) {
    return where(one -> one.piece().species() == species);
  }

  /** Weight boned in an hour of the month, of each species of which it is known. */
  public Map<Species, BigFraction> weightAnHour() {
    var known = new EnumMap<Species, BigFraction>(Species.class);
    for (var species : Species.values()) {
      of(species).month.weightAnHour().ifPresent(weight -> known.put(species, weight));
    }
    return known;
  }

  private Pace of(Piece piece) {
    return where(one -> one.piece().equals(piece));
  }

  /**
   * Minutes for a piece and weight an hour, by species and piece in tree order, then by boner. If a
   * piece has several boners, the first figures are of all of them together.
   */
  public List<MonthFigure> figures(MonthRecords records) {
    var figures = new ArrayList<MonthFigure>();
    for (var species : Species.values()) {
      for (var item : records.night().shop().cuts().of(species).items()) {
        var piece = new Piece(species, item.id());
        var all = of(piece);
        var names = all.month.counted().stream().map(Interval::boner).distinct().sorted().toList();
        if (names.size() > 1) {
          figures.addAll(all.figures(species, new MonthFigure.Part(item, Optional.empty())));
        }
        for (String name : names) {
          var own = all.where(one -> one.boner().equals(name));
          figures.addAll(own.figures(species, new MonthFigure.Part(item, Optional.of(name))));
        }
      }
    }
    return figures;
  }

  private List<MonthFigure> figures(Species species, MonthFigure.Group group) {
    int pieces = month.pieces();
    var median = month.each().map(Spread::median);
    return List.of(
        MonthFigure.of(FigureName.MINUTES_A_PIECE, species, group, pieces, median)
            .withSpread(month.each())
            .with(new Comparison(before.pieces(), Optional.empty(), before.each())),
        MonthFigure.of(FigureName.BONED_AN_HOUR, species, group, pieces, month.weightAnHour())
            .with(Comparison.of(before.pieces(), before.weightAnHour())));
  }

  /** Pieces that took longer than before, each boner compared with himself. */
  public List<Finding> findings(MonthRecords records) {
    var pieces =
        month.counted().stream()
            .map(Interval::piece)
            .distinct()
            .sorted(Comparator.comparing(Piece::species))
            .toList();
    return pieces.stream()
        .flatMap(piece -> of(piece).finding(records, piece, pieces.size()).stream())
        .toList();
  }

  /** That the piece took longer; empty if it did not. */
  private Optional<Finding> finding(MonthRecords records, Piece piece, int comparisons) {
    return GroupComparison.difference(
            new Compared<>(piece.species(), month.counted(), before.counted()),
            one -> Optional.of(one.minutesEach()),
            Interval::boner,
            comparisons)
        .filter(difference -> difference.low() > 0)
        .map(difference -> finding(records, piece, difference));
  }

  private Finding finding(MonthRecords records, Piece piece, Difference difference) {
    var species = piece.species();
    var item = records.night().shop().cuts().of(species).find(piece.item()).orElseThrow();
    return Finding.likely(
        Finding.Kind.PACE,
        "",
        List.of(piece.item()),
        difference.evidence(
            List.of("difference", "pieces", "pieces_before"),
            Pace::minutes,
            Map.of(
                "species",
                new Evidence.Kind(species),
                "piece",
                new Evidence.Cuts(species, List.of(item)),
                "minutes",
                minutes(month.each().orElseThrow().median()),
                "usual",
                minutes(before.each().orElseThrow().median()))),
        List.of());
  }

  private static Evidence minutes(BigFraction value) {
    return new Evidence.Number(value, 1);
  }
}
