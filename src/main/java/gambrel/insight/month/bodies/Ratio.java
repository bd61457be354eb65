package gambrel.insight.month.bodies;

import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import java.util.Collection;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A part over a whole, summed over the bodies of which both are known: an average weighted by mass.
 *
 * @param part sum of the parts
 * @param whole sum of the wholes
 * @param bodies how many bodies stand behind it
 */
public record Ratio(Weight part, Weight whole, int bodies) {

  /** All parts over all wholes. */
  public static Ratio sum(Collection<Share> shares) {
    return new Ratio(
        Weight.sum(shares.stream().map(Share::part).toList()),
        Weight.sum(shares.stream().map(Share::whole).toList()),
        shares.size());
  }

  /** Whether it is of any body. */
  public boolean isKnown() {
    return bodies > 0;
  }

  /** Per cent; empty if it is of no body. */
  public Optional<BigFraction> percent() {
    return whole.isZero() ? Optional.empty() : Optional.of(part.percentOf(whole));
  }
}
