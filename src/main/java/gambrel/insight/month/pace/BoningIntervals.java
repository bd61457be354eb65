package gambrel.insight.month.pace;

import gambrel.insight.month.figures.MonthBodies;
import gambrel.insight.month.figures.Spread;
import gambrel.trade.cuts.SideLabels;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Times of work, read from weighings on the block that name a boner. A piece is boned from its
 * weighing to the next weighing of the same boner on the same day; the last piece of a day has no
 * end. Only topmost block weighings count: a rump that is weighed while its quarter is being boned
 * does not end the quarter. Packing scales are not read, since they show the packer.
 *
 * @param counted the intervals that show work on a piece
 * @param breaks how many intervals were left out because they include other work or a break
 */
public record BoningIntervals(List<Interval> counted, int breaks) {
  /** Pieces weighed within less than this were fetched together. */
  private static final Duration TOGETHER = Duration.ofMinutes(1);

  /** The most minutes for a piece. */
  private static final BigFraction LONGEST = BigFraction.of(60);

  /** The longest time for a piece, as a multiple of the median of such pieces. */
  private static final int TIMES_USUAL = 3;

  private static final long MILLIS_A_MINUTE = 60_000;
  private static final int MINUTES_AN_HOUR = 60;

  /**
   * A kind of piece.
   *
   * @param species the species of its body
   * @param item what it is; left and right are the same
   */
  public record Piece(Species species, String item) {}

  /**
   * The time from a boner's weighing on the block to the same boner's next: one piece was boned in
   * it, or several that were fetched together.
   *
   * @param boner who
   * @param piece what was weighed on the block; the first of several pieces
   * @param pieces how many pieces
   * @param weight weight of all pieces
   * @param minutes how long it took
   */
  public record Interval(
      String boner, Piece piece, int pieces, Weight weight, BigFraction minutes) {
    /** Minutes for one piece. */
    BigFraction minutesEach() {
      return minutes.divide(pieces);
    }
  }

  /** A boner's weighing of a piece. */
  private record Start(Weighing weighing, Piece piece) {
    String boner() {
      return weighing.boner();
    }

    boolean isOfDayOf(Start other) {
      return boner().equals(other.boner()) && weighing.date().equals(other.weighing.date());
    }
  }

  /** The times of work of some months. */
  static BoningIntervals of(List<MonthBodies> months) {
    return withoutBreaks(
        read(
            months.stream()
                .flatMap(month -> starts(month).stream())
                .sorted(
                    Comparator.comparing(Start::boner)
                        .thenComparing(Start::weighing, Weighing.BY_TIME))
                .toList()));
  }

  private static List<Start> starts(MonthBodies month) {
    var starts = new ArrayList<Start>();
    for (var body : month.onBlock()) {
      for (var weighing : body.balance().topmostBlocks()) {
        if (!weighing.boner().isEmpty() && YearMonth.from(weighing.date()).equals(month.month())) {
          var piece = new Piece(body.species(), SideLabels.plain(weighing.item()));
          starts.add(new Start(weighing, piece));
        }
      }
    }
    return starts;
  }

  /** The intervals between weighings, which are sorted by boner and time. */
  private static List<Interval> read(List<Start> starts) {
    var all = new ArrayList<Interval>();
    int fetched = 0;
    for (int i = 1; i < starts.size(); i++) {
      var last = starts.get(i - 1);
      var next = starts.get(i);
      boolean goesOn = next.isOfDayOf(last);
      if (!goesOn || between(last, next).compareTo(TOGETHER) >= 0) {
        if (goesOn) {
          all.add(interval(starts.subList(fetched, i), next));
        }
        fetched = i;
      }
    }
    return all;
  }

  private static Duration between(Start one, Start next) {
    return Duration.between(one.weighing().time(), next.weighing().time());
  }

  private static Interval interval(List<Start> fetched, Start next) {
    var first = fetched.get(0);
    return new Interval(
        first.boner(),
        first.piece(),
        fetched.size(),
        Weight.sum(fetched.stream().map(start -> start.weighing().net()).toList()),
        BigFraction.of(between(first, next).toMillis(), MILLIS_A_MINUTE));
  }

  private static BoningIntervals withoutBreaks(List<Interval> all) {
    var counted = new ArrayList<Interval>();
    Groups.inOrder(all.stream(), Interval::piece)
        .values()
        .forEach(
            like -> {
              var usual = new BoningIntervals(like, 0).each().orElseThrow().median();
              like.stream().filter(one -> isWork(one, usual)).forEach(counted::add);
            });
    return new BoningIntervals(counted, all.size() - counted.size());
  }

  private static boolean isWork(Interval interval, BigFraction usual) {
    var each = interval.minutesEach();
    return each.compareTo(LONGEST) <= 0 && each.compareTo(usual.multiply(TIMES_USUAL)) <= 0;
  }

  /** Some of the work. */
  BoningIntervals where(Predicate<Interval> which) {
    return new BoningIntervals(counted.stream().filter(which).toList(), breaks);
  }

  /** How many pieces were boned. */
  int pieces() {
    return counted.stream().mapToInt(Interval::pieces).sum();
  }

  /** The spread of the minutes for one piece; empty without work. */
  Optional<Spread> each() {
    return Spread.of(counted.stream().map(Interval::minutesEach).toList());
  }

  /** Weight boned in an hour, in the shop's unit; empty if the pieces took no time. */
  public Optional<BigFraction> weightAnHour() {
    var weight = Weight.sum(counted.stream().map(Interval::weight).toList());
    var minutes =
        counted.stream().map(Interval::minutes).reduce(BigFraction.ZERO, BigFraction::add);
    return minutes.signum() == 0
        ? Optional.empty()
        : Optional.of(weight.fraction().multiply(MINUTES_AN_HOUR).divide(minutes));
  }
}
