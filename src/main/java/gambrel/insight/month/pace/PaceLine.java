package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.pace.BoningInterval.Piece;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How fast one boner boned one kind of piece in a month.
 *
 * @param species the species
 * @param item the piece
 * @param boner who; empty for all boners together
 * @param month the pace in the month
 * @param before the pace in the twelve months before; empty if unknown
 */
public record PaceLine(
    Species species, Item item, Optional<String> boner, Pace month, Optional<Pace> before) {

  /**
   * The pace of a month by species and piece in tree order. If a piece has several boners, the
   * first line is of all of them together.
   */
  public static List<PaceLine> of(MonthRecords records, BoningIntervals.Both times) {
    var lines = new ArrayList<PaceLine>();
    for (var species : Species.values()) {
      for (var item : records.night().shop().cuts().of(species).items()) {
        lines.addAll(of(new Piece(species, item.id()), item, times));
      }
    }
    return lines;
  }

  private static List<PaceLine> of(Piece piece, Item item, BoningIntervals.Both times) {
    var boners = new ArrayList<Optional<String>>();
    times.month().of(piece).stream()
        .map(BoningInterval::boner)
        .distinct()
        .sorted()
        .forEach(boner -> boners.add(Optional.of(boner)));
    if (boners.size() > 1) {
      boners.add(0, Optional.empty());
    }
    return boners.stream()
        .map(
            boner ->
                new PaceLine(
                    piece.species(),
                    item,
                    boner,
                    times.month().of(piece, boner).orElseThrow(),
                    times.before().of(piece, boner)))
        .toList();
  }
}
