package gambrel.insight.month.pace;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The time from a boner's weighing on the block to the same boner's next: one piece was boned in
 * it, or several that were fetched together.
 *
 * @param boner who
 * @param piece what was weighed on the block; the first of several pieces
 * @param pieces how many pieces
 * @param weight weight of all pieces
 * @param minutes how long it took
 */
public record BoningInterval(
    String boner, Piece piece, int pieces, Weight weight, BigFraction minutes) {

  /**
   * A kind of piece.
   *
   * @param species the species of its body
   * @param item what it is; left and right are the same
   */
  public record Piece(Species species, String item) implements Comparable<Piece> {
    private static final Comparator<Piece> ORDER =
        Comparator.comparing(Piece::species).thenComparing(Piece::item);

    @Override
    public int compareTo(Piece other) {
      return ORDER.compare(this, other);
    }
  }

  /** Minutes for one piece. */
  BigFraction minutesEach() {
    return minutes.divide(pieces);
  }
}
