package gambrel.insight.month.pace;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One piece boned, or several fetched together: from its weighing on the block to the same boner's
 * next.
 *
 * @param boner who
 * @param species of the first of its bodies
 * @param item what was weighed on the block
 * @param pieces how many
 * @param weight of all of them
 * @param minutes from its weighing to the next
 */
public record BoningInterval(
    String boner, Species species, String item, int pieces, Weight weight, BigFraction minutes) {

  /** Minutes a piece. */
  BigFraction minutesEach() {
    return minutes.divide(pieces);
  }
}
