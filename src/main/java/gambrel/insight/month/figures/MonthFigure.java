package gambrel.insight.month.figures;

import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.FileWord;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A figure of a month.
 *
 * @param name which figure, with its unit and what it is a share of
 * @param whose which owner's bodies; empty for all
 * @param species which species; empty for all
 * @param group which bodies, or which part of them
 * @param bodies how many bodies or pieces it is of
 * @param value the exact figure, in its unit; empty if unknown
 * @param spread the figures of single bodies or pieces; empty if they are not told
 * @param before what it is compared with, mostly the twelve months before
 * @param interval the interval that it lies in
 */
public record MonthFigure(
    FigureName name,
    Optional<Ownership> whose,
    Optional<Species> species,
    Group group,
    int bodies,
    Optional<BigFraction> value,
    Optional<Spread> spread,
    Comparison before,
    Optional<Interval> interval) {

  /** A figure of all owners' bodies, without comparison and interval. */
  public static MonthFigure of(
      FigureName name, Species species, Group group, int bodies, Optional<BigFraction> value) {
    return of(name, Optional.of(species), group, bodies, value);
  }

  /** A figure of all owners' bodies of all species, without comparison and interval. */
  public static MonthFigure ofAll(FigureName name, Group group, int bodies, BigFraction value) {
    return of(name, Optional.empty(), group, bodies, Optional.of(value));
  }

  private static MonthFigure of(
      FigureName name,
      Optional<Species> species,
      Group group,
      int bodies,
      Optional<BigFraction> value) {
    return new MonthFigure(
        name,
        Optional.empty(),
        species,
        group,
        bodies,
        value,
        Optional.empty(),
        Comparison.NONE,
        Optional.empty());
  }

  /** Another figure of the same bodies. */
  public MonthFigure with(FigureName other, BigFraction figure) {
    return new MonthFigure(
        other, whose, species, group, bodies, Optional.of(figure), spread, before, interval);
  }

  /** A figure of the same bodies that rises with this one; the ends of its interval do too. */
  public MonthFigure map(FigureName other, UnaryOperator<BigFraction> rising) {
    return with(other, rising.apply(value.orElseThrow())).with(interval.map(i -> i.map(rising)));
  }

  /** This figure as one of an owner's bodies. */
  public MonthFigure with(Ownership owner) {
    return new MonthFigure(
        name, Optional.of(owner), species, group, bodies, value, spread, before, interval);
  }

  /** This figure compared with {@code others}. */
  public MonthFigure with(Comparison others) {
    return new MonthFigure(name, whose, species, group, bodies, value, spread, others, interval);
  }

  /** This figure with the figures of single bodies or pieces. */
  public MonthFigure withSpread(Optional<Spread> ofEach) {
    return new MonthFigure(name, whose, species, group, bodies, value, ofEach, before, interval);
  }

  /** This figure with an interval, if there is one. */
  public MonthFigure with(Optional<Interval> between) {
    return new MonthFigure(name, whose, species, group, bodies, value, spread, before, between);
  }

  /**
   * What a figure is compared with.
   *
   * @param bodies how many bodies or pieces
   * @param value the figure of all of them together
   * @param spread the figures of single bodies
   */
  public record Comparison(int bodies, Optional<BigFraction> value, Optional<Spread> spread) {
    /** No comparison. */
    public static final Comparison NONE = new Comparison(0, Optional.empty(), Optional.empty());

    /** A comparison with single bodies. */
    public static Comparison of(Optional<Spread> spread) {
      return new Comparison(spread.map(Spread::number).orElse(0), Optional.empty(), spread);
    }

    /** A comparison with other bodies together. */
    public static Comparison of(int bodies, Optional<BigFraction> value) {
      return new Comparison(bodies, value, Optional.empty());
    }
  }

  /**
   * An interval that a figure lies in.
   *
   * @param kind what the interval is
   * @param lower its lower end
   * @param upper its upper end
   */
  public record Interval(Kind kind, BigFraction lower, BigFraction upper) {
    private Interval map(UnaryOperator<BigFraction> rising) {
      return new Interval(kind, rising.apply(lower), rising.apply(upper));
    }

    /** The interval of a difference. */
    public static Interval of(Difference difference) {
      return new Interval(
          Kind.DIFFERENCE,
          Exact.ofStatistic(difference.low()),
          Exact.ofStatistic(difference.high()));
    }

    /** What an interval is. */
    public enum Kind {
      /** The true mean or slope lies in it 19 times in 20. */
      CONFIDENCE("95 % confidence"),
      /** The true difference lies in it 99 times in 100. */
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

  /** The bodies, or the part of them, that a figure of a month is about. */
  public interface Group {
    /** Its name in data files; empty for all bodies. */
    String id();
  }

  /** How the bodies of a table of yields are grouped. */
  public enum By implements FileWord {
    /** Not grouped. */
    ALL,
    /** By the class that the shop gives them. */
    CLASS,
    /** By boner. */
    BONER;
  }

  /**
   * Bodies of one class or one boner.
   *
   * @param by how they are grouped
   * @param name their class or boner; empty for all of the species
   */
  public record Like(By by, String name) implements Group {
    @Override
    public String id() {
      return (by.id() + ' ' + name).strip();
    }
  }

  /** Bodies of one named boner or supplier, or money under one name. */
  public record Named(String name) implements Group {
    @Override
    public String id() {
      return name;
    }
  }

  /** One body. */
  public record OfBody(MonthBody body) implements Group {
    @Override
    public String id() {
      return "body " + body.id();
    }
  }

  /**
   * A part of the bodies.
   *
   * @param item the part
   * @param boner who boned it; empty for all boners
   */
  public record Part(Item item, Optional<String> boner) implements Group {
    @Override
    public String id() {
      return (item.id() + ' ' + boner.orElse("")).strip();
    }
  }

  /**
   * A way to cut a piece.
   *
   * @param piece the piece
   * @param items what it was packed as
   */
  public record Way(Item piece, List<Item> items) implements Group {
    @Override
    public String id() {
      return piece.id() + " as " + items.stream().map(Item::id).collect(Collectors.joining("+"));
    }
  }
}
