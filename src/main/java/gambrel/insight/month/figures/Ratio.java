package gambrel.insight.month.figures;

import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import java.util.Collection;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Sum of parts over sum of wholes, of the bodies of which both are known: an average by mass.
 *
 * @param part sum of the parts
 * @param whole sum of the wholes
 * @param bodies how many bodies were summed
 */
public record Ratio(Weight part, Weight whole, int bodies) {
  /** The ratio of some bodies' shares. */
  public static Ratio sum(Collection<Share> shares) {
    return new Ratio(
        Weight.sum(shares.stream().map(Share::part).toList()),
        Weight.sum(shares.stream().map(Share::whole).toList()),
        shares.size());
  }

  /** Whether any body was summed. */
  public boolean isKnown() {
    return bodies > 0;
  }

  /** The ratio in per cent; empty if no body was summed. */
  public Optional<BigFraction> percent() {
    return whole.isZero() ? Optional.empty() : Optional.of(part.percentOf(whole));
  }
}
