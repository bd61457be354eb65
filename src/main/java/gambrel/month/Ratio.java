package gambrel.month;

import gambrel.balance.BodyBalance;
import gambrel.balance.Drawn;
import gambrel.measure.Share;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import java.util.Collection;
import java.util.List;
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

  /** One body's figure: what part it is of what whole. Kept with the body: make few of them. */
  public static final class Figure {
    private final Drawn<BodyBalance, Optional<Ratio>> ratio;
    private final Drawn<BodyBalance, Optional<BigFraction>> percent;

    /** The figure that {@code share} reads from a body. */
    public Figure(Function<BodyBalance, Optional<Share>> share) {
      ratio =
          new Drawn<>(body -> share.apply(body).map(one -> new Ratio(one.part(), one.whole(), 1)));
      percent = new Drawn<>(body -> of(body).flatMap(Ratio::percent));
    }

    /** This figure of one body; empty where not known. */
    public Optional<Ratio> of(BodyBalance balance) {
      return ratio.of(balance);
    }

    /** This figure of one body, in per cent. */
    public Optional<BigFraction> percent(BodyBalance balance) {
      return percent.of(balance);
    }

    /** This figure of several bodies. */
    public Ratio of(Collection<BodyAccount> accounts) {
      return sum(each(accounts));
    }

    /** How this figure spreads over several bodies, in per cent; empty where it is known of none. */
    public Optional<Spread> spread(Collection<BodyAccount> accounts) {
      return Spread.ofPercent(each(accounts));
    }

    private List<Ratio> each(Collection<BodyAccount> accounts) {
      return accounts.stream().flatMap(account -> of(account.balance()).stream()).toList();
    }
  }

  /**
   * Which of two is the smaller share, exactly: parts times the other's whole, in 128 bits. Neither
   * whole may be nothing.
   */
  static int compareShares(Ratio one, Ratio other) {
    int bySize =
        compareProducts(
            one.part.hundredThousandths(),
            other.whole.hundredThousandths(),
            other.part.hundredThousandths(),
            one.whole.hundredThousandths());
    return one.whole.isNegative() == other.whole.isNegative() ? bySize : -bySize;
  }

  private static int compareProducts(long a, long b, long c, long d) {
    int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
    return high == 0 ? Long.compareUnsigned(a * b, c * d) : high;
  }

  /** One body's part in a whole; empty where one is not known or the whole is nothing. */
  public static Optional<Ratio> ofOne(Optional<Weight> part, Optional<Weight> whole) {
    return part.isEmpty() || whole.filter(weight -> !weight.isZero()).isEmpty()
        ? Optional.empty()
        : Optional.of(new Ratio(part.get(), whole.get(), 1));
  }

  /** All parts over all wholes. */
  public static Ratio sum(Collection<Ratio> ratios) {
    var part = Weight.sum(ratios.stream().map(Ratio::part).toList());
    var whole = Weight.sum(ratios.stream().map(Ratio::whole).toList());
    return new Ratio(part, whole, ratios.stream().mapToInt(Ratio::bodies).sum());
  }

  /** Whether it is of any body. */
  public boolean isKnown() {
    return bodies > 0;
  }

  /** Per cent; empty where it is of no body. */
  public Optional<BigFraction> percent() {
    return whole.isZero()
        ? Optional.empty()
        : Optional.of(part.percentOf(whole));
  }
}
