package gambrel.insight.month.findings;

import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Spread;
import gambrel.trade.cuts.Species;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A figure of a month.
 *
 * @param name which figure, with its unit and what it is a share of
 * @param whose whose bodies; empty for all
 * @param species which species; empty for all
 * @param group which bodies or what of them
 * @param bodies of how many bodies or pieces it is
 * @param value the exact figure, in its unit; empty if unknown
 * @param before the same of the twelve months before, or of what it is compared with
 * @param interval between what it lies
 */
public record MonthFigure(
    FigureName name,
    Optional<Ownership> whose,
    Optional<Species> species,
    FigureGroup group,
    int bodies,
    Optional<BigFraction> value,
    Comparison before,
    Optional<Interval> interval) {

  /** A figure of all owners, neither compared nor with an interval. */
  public static MonthFigure of(
      FigureName name,
      Species species,
      FigureGroup group,
      int bodies,
      Optional<BigFraction> value) {
    return new MonthFigure(
        name,
        Optional.empty(),
        Optional.of(species),
        group,
        bodies,
        value,
        Comparison.NONE,
        Optional.empty());
  }

  /** The same figure of one owner's bodies. */
  public MonthFigure with(Ownership owner) {
    return new MonthFigure(
        name, Optional.of(owner), species, group, bodies, value, before, interval);
  }

  /** The same figure beside {@code others}. */
  public MonthFigure with(Comparison others) {
    return new MonthFigure(name, whose, species, group, bodies, value, others, interval);
  }

  /** The same figure with an interval. */
  public MonthFigure with(Interval between) {
    return new MonthFigure(
        name, whose, species, group, bodies, value, before, Optional.of(between));
  }

  /**
   * What a figure is compared with.
   *
   * @param bodies of how many bodies or pieces
   * @param value the same figure of theirs
   * @param spread how it spreads, body by body
   */
  public record Comparison(int bodies, Optional<BigFraction> value, Optional<Spread> spread) {
    /** No comparison. */
    public static final Comparison NONE = new Comparison(0, Optional.empty(), Optional.empty());

    /** A comparison with bodies whose figure is known one by one. */
    public static Comparison of(Optional<Spread> spread) {
      return new Comparison(spread.map(Spread::number).orElse(0), Optional.empty(), spread);
    }

    /** A comparison with the figure of other bodies. */
    public static Comparison of(int bodies, Optional<BigFraction> value) {
      return new Comparison(bodies, value, Optional.empty());
    }
  }

  /**
   * Between what a figure lies.
   *
   * @param kind what the interval is
   * @param lower its lower end
   * @param upper its upper end
   */
  public record Interval(Kind kind, BigFraction lower, BigFraction upper) {
    /** What an interval is. */
    public enum Kind {
      /** The mean or slope lies in it 19 times in 20. */
      CONFIDENCE("95 % confidence"),
      /** One more body lies in it 19 times in 20. */
      PREDICTION("95 % prediction"),
      /** The true difference lies in it, but for one of a hundred months without a difference. */
      DIFFERENCE("99 % of the difference, shared among comparisons"),
      /** The middle half of the bodies lies in it. */
      MIDDLE_HALF("middle half");

      private final String id;

      Kind(String id) {
        this.id = id;
      }

      /** Its name in data files. */
      public String id() {
        return id;
      }
    }
  }
}
