package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.pace.BoningInterval.Piece;
import gambrel.trade.cuts.SideLabels;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
public record BoningIntervals(List<BoningInterval> counted, int breaks) {
  /** Pieces weighed within less than this were fetched together. */
  private static final Duration TOGETHER = Duration.ofMinutes(1);

  /** The most minutes for a piece. */
  private static final BigFraction LONGEST = BigFraction.of(60);

  /** The longest time for a piece, as a multiple of the median of such pieces. */
  private static final int TIMES_USUAL = 3;

  private static final long MILLIS_A_MINUTE = 60_000;

  /** Copies the intervals. */
  public BoningIntervals {
    counted = List.copyOf(counted);
  }

  /**
   * The times of work of a month and of the twelve months before.
   *
   * @param month those of the month
   * @param before those of the twelve months before
   */
  public record Both(BoningIntervals month, BoningIntervals before) {}

  /** The times of work of a month and of the twelve months before. */
  public static Both of(MonthRecords records) {
    return new Both(of(List.of(records.bodies())), of(records.baseline().months()));
  }

  /** A boner's weighing of a piece. */
  private record Start(Weighing weighing, Piece piece) {
    String boner() {
      return weighing.boner();
    }

    LocalDate day() {
      return weighing.date();
    }
  }

  private static BoningIntervals of(List<MonthBodies> months) {
    var days =
        months.stream()
            .flatMap(month -> starts(month).stream())
            .sorted(Comparator.comparing(Start::weighing, Weighing.BY_TIME))
            .collect(
                Collectors.groupingBy(
                    Start::boner,
                    TreeMap::new,
                    Collectors.groupingBy(Start::day, TreeMap::new, Collectors.toList())));
    var all = new ArrayList<BoningInterval>();
    days.values().forEach(ofBoner -> ofBoner.values().forEach(day -> read(day, all)));
    return withoutBreaks(all);
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

  private static void read(List<Start> day, List<BoningInterval> all) {
    var fetched = new ArrayList<Start>();
    for (var start : day) {
      if (!fetched.isEmpty() && !isTogether(fetched.get(fetched.size() - 1), start)) {
        all.add(interval(fetched, start));
        fetched.clear();
      }
      fetched.add(start);
    }
  }

  private static Duration between(Start one, Start next) {
    return Duration.between(one.weighing().time(), next.weighing().time());
  }

  private static boolean isTogether(Start last, Start next) {
    return between(last, next).compareTo(TOGETHER) < 0;
  }

  private static BoningInterval interval(List<Start> fetched, Start next) {
    var first = fetched.get(0);
    return new BoningInterval(
        first.boner(),
        first.piece(),
        fetched.size(),
        Weight.sum(fetched.stream().map(start -> start.weighing().net()).toList()),
        BigFraction.of(between(first, next).toMillis(), MILLIS_A_MINUTE));
  }

  private static BoningIntervals withoutBreaks(List<BoningInterval> all) {
    Map<Piece, List<BoningInterval>> byPiece =
        all.stream()
            .collect(
                Collectors.groupingBy(BoningInterval::piece, TreeMap::new, Collectors.toList()));
    var counted = new ArrayList<BoningInterval>();
    for (var like : byPiece.values()) {
      var usual = Pace.of(like).orElseThrow().each().median();
      like.stream().filter(one -> isWork(one, usual)).forEach(counted::add);
    }
    return new BoningIntervals(counted, all.size() - counted.size());
  }

  private static boolean isWork(BoningInterval interval, BigFraction usual) {
    var each = interval.minutesEach();
    return each.compareTo(LONGEST) <= 0 && each.compareTo(usual.multiply(TIMES_USUAL)) <= 0;
  }

  /** The pace of all work on a species; empty if there was none. */
  public Optional<Pace> of(Species species) {
    return Pace.of(counted.stream().filter(one -> one.piece().species() == species).toList());
  }

  /** The intervals of a kind of piece. */
  List<BoningInterval> of(Piece piece) {
    return counted.stream().filter(one -> one.piece().equals(piece)).toList();
  }

  /** The pace of one boner, or of all if {@code boner} is empty; empty if there was no work. */
  Optional<Pace> of(Piece piece, Optional<String> boner) {
    return Pace.of(
        of(piece).stream().filter(one -> one.boner().equals(boner.orElse(one.boner()))).toList());
  }
}
