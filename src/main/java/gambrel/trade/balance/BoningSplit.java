package gambrel.trade.balance;

import gambrel.trade.measure.Weight;

/**
 * How the weight into the boning room (W) of a body that was cut divides. Offal and rail trim are
 * left out. Together with the cutting loss, or with what was not weighed, the parts add up to W.
 *
 * @param home packs, and its parts of finished batches
 * @param pending meat in open batches
 * @param bone bone in bins; zero if the shop weighs no bins
 * @param fat fat in bins; zero if the shop weighs no bins
 * @param waste anything else in bins; zero if the shop weighs no bins
 * @param batchLoss meat that finished batches lost
 */
public record BoningSplit(
    Weight home, Weight pending, Weight bone, Weight fat, Weight waste, Weight batchLoss) {}
