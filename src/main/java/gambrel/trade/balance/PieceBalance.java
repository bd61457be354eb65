package gambrel.trade.balance;

import gambrel.trade.measure.Weight;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A piece weighed on the block and the end products made of it.
 *
 * @param item the piece
 * @param block its weight on the block
 * @param out packs, tubs into batches and bins of the piece and of all items under it; empty where
 *     end products of the body lie outside its block pieces
 * @param resolutionSquared U² of block less out from the scales' divisions (k = 2)
 * @param weighings its block weighings
 */
public record PieceBalance(
    String item,
    Weight block,
    Optional<Weight> out,
    BigFraction resolutionSquared,
    List<Weighing> weighings) {
  /** Copies the weighings. */
  public PieceBalance {
    weighings = List.copyOf(weighings);
  }

  /** Block less out, where out is known. */
  public Optional<Weight> loss() {
    return out.map(block::minus);
  }
}
