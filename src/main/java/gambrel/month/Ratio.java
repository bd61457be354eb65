package gambrel.month;

import gambrel.balance.BodyBalance;
import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A part over a whole, summed over the bodies of which both are known: an average weighted by mass.
 *
 * @param part sum of the parts
 * @param whole sum of the wholes
 * @param bodies how many bodies stand behind it
 */
public record Ratio(Weight part, Weight whole, int bodies) {
  /** Nothing known. */
  public static final Ratio NONE = new Ratio(Weight.ZERO, Weight.ZERO, 0);

  /** One body's figure: what part it is of what whole. */
  public record Figure(
      Function<BodyBalance, Optional<Weight>> part, Function<BodyBalance, Optional<Weight>> whole) {

    /** This figure of one body; empty where not known. */
    public Optional<Ratio> of(BodyBalance balance) {
      var part = this.part.apply(balance);
      var whole = this.whole.apply(balance).filter(weight -> !weight.isZero());
      return part.isEmpty() || whole.isEmpty()
          ? Optional.empty()
          : Optional.of(new Ratio(part.get(), whole.get(), 1));
    }

    /** This figure of several bodies. */
    public Ratio of(Collection<BodyAccount> accounts) {
      return accounts.stream()
          .flatMap(account -> of(account.balance()).stream())
          .reduce(NONE, Ratio::plus);
    }
  }

  private Ratio plus(Ratio other) {
    return new Ratio(
        part.plus(other.part), whole.plus(other.whole), bodies + other.bodies);
  }

  /** Whether it is of any body. */
  public boolean isKnown() {
    return bodies > 0;
  }

  /** Per cent; empty where it is of no body. */
  public Optional<BigFraction> percent() {
    return whole.isZero()
        ? Optional.empty()
        : Optional.of(Exact.percent(part.fraction(), whole.fraction()));
  }
}
