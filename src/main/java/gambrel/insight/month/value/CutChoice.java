package gambrel.insight.month.value;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A piece that the shop cuts in more than one way, with the value of each way.
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

  /** Copies the ways. */
  public CutChoice {
    ways = List.copyOf(ways);
  }

  /**
   * One way to cut the piece.
   *
   * @param items what the piece was packed as: parts directly under it, or itself
   * @param cuts the bodies that were cut so
   * @param value money in the major unit for a unit of weight, of all bodies together
   * @param spread the values of single bodies
   * @param toBest way less best way; empty for the best way itself and where bodies are too few
   */
  public record Way(
      List<Item> items,
      List<Cut> cuts,
      BigFraction value,
      Spread spread,
      Optional<Difference> toBest) {
    /** Copies the lists. */
    public Way {
      items = List.copyOf(items);
      cuts = List.copyOf(cuts);
    }

    /** How many bodies were cut so. */
    public int bodies() {
      return cuts.size();
    }
  }

  /**
   * What one body's piece was cut into.
   *
   * @param body the body
   * @param way the ids of the parts, joined by blanks
   * @param worth money in the major unit
   * @param base the weight of the piece, or of the body
   */
  public record Cut(MonthBody body, String way, BigFraction worth, Weight base) {
    BigFraction rate() {
      return worth.divide(base.fraction());
    }
  }

  /** The best way. */
  public Way best() {
    return ways.get(0);
  }
}
