package gambrel.trade.balance;

import gambrel.trade.measure.Weight;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The weights that left a body, and its cutting loss. Known from the first end product on.
 *
 * @param takeHome packs, and the meat part of its batches; without offal
 * @param meatHome the part of take-home of kinds meat and trim; empty for a body left whole
 * @param offal packs of offal
 * @param tub green weight into batches
 * @param bone bone in bins; empty where bins are not weighed
 * @param fat fat in bins; empty where bins are not weighed
 * @param waste anything else in bins; empty where bins are not weighed
 * @param railTrim trimmed while hanging; contained in the weights above
 * @param cuttingLoss W less packs, tubs into batches and bins; empty where bins are not weighed or
 *     W is unknown
 * @param unweighed W less packs and tubs into batches, where bins are not weighed; else empty
 * @param resolutionSquared U² of the cutting loss from the scales' divisions (k = 2)
 * @param permittedSquared square of the scales' permitted error of the cutting loss; empty if a
 *     scale has no accuracy class
 * @param batchLoss meat of it that its batches lost; empty while one is open
 */
public record Outputs(
    Weight takeHome,
    Optional<Weight> meatHome,
    Weight offal,
    Weight tub,
    Optional<Weight> bone,
    Optional<Weight> fat,
    Optional<Weight> waste,
    Weight railTrim,
    Optional<Weight> cuttingLoss,
    Optional<Weight> unweighed,
    Optional<BigFraction> resolutionSquared,
    Optional<BigFraction> permittedSquared,
    Optional<Weight> batchLoss) {
  /**
   * U² of the cutting loss from divisions and permitted errors together; unknown ones count zero.
   */
  public BigFraction uncertaintySquared() {
    return resolutionSquared
        .orElse(BigFraction.ZERO)
        .add(permittedSquared.orElse(BigFraction.ZERO));
  }
}
