package gambrel.trade.balance;

import gambrel.trade.measure.Weight;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What came of a body; known from the first end product on.
 *
 * @param takeHome packs, and the meat part of its batches; without offal
 * @param meatHome the same, of kinds meat and trim; empty for a body left as it hung
 * @param offal packs of offal
 * @param tub green weight into batches
 * @param bone bone in bins; empty where bins are not weighed
 * @param fat fat in bins; empty where bins are not weighed
 * @param waste anything else in bins; empty where bins are not weighed
 * @param railTrim trimmed while hanging; contained in the others
 * @param cuttingLoss weight into the boning room less all that came out; empty where bins are not
 *     weighed or W is unknown
 * @param unweighed the same without bins, where these are not weighed
 * @param resolutionSquared U² of the cutting loss from the scales' divisions (k = 2)
 * @param permittedSquared square of what the scales' permitted errors allow; empty if one has no
 *     accuracy class
 * @param batchLoss what its batches lost of it; empty while one is open
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
