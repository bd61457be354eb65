package gambrel.insight.month.value;

import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A piece that the shop cuts in more than one way, with what each way realised.
 *
 * @param species the species
 * @param piece the piece
 * @param perPiece whether values are for a unit of weight of the piece, as weighed on the block;
 *     else for a unit of weight of the body into the boning room
 * @param ways best first
 */
public record CutChoice(Species species, Item piece, boolean perPiece, List<Way> ways) {
  /** CuttingStyles of fewer bodies than this are left out. */
  public static final int FEWEST = 3;

  /** Copies the ways. */
  public CutChoice {
    ways = List.copyOf(ways);
  }

  /**
   * One way to cut it.
   *
   * @param items what the piece was packed as: parts directly under it, or itself
   * @param bodies how many bodies were cut so
   * @param value money in the major unit for a unit of weight, all over all
   * @param spread of the bodies
   * @param toBest how far it lies from the best way; empty for the best itself and for few bodies
   */
  public record Way(
      List<Item> items, int bodies, BigFraction value, Spread spread, Optional<Difference> toBest) {
    /** Copies the items. */
    public Way {
      items = List.copyOf(items);
    }
  }

  /** The best way. */
  public Way best() {
    return ways.get(0);
  }
}
