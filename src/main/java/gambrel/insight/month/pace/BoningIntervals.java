package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Spread;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads times of work from weighings on the block whose boner is known. A piece took as long as it
 * is from its weighing to the next that the same boner makes that day; the day's last piece has no
 * end. Only the topmost block weighings of a body count, since a rump weighed while its quarter is
 * being boned ends nothing. Times of packing scales are never read: they show the packer.
 *
 * @param counted the stints that show work
 * @param breaks how many were left out because something else was done meanwhile
 */
public record BoningIntervals(List<BoningInterval> counted, int breaks) {
  /** Weighings closer together than this were of pieces fetched together. */
  private static final Duration TOGETHER = Duration.ofMinutes(1);

  /** Whatever took longer than this was not work on one piece. */
  private static final BigFraction LONGEST = BigFraction.of(60);

  /** Nor was what took so many times as long as such a piece usually takes. */
  private static final int TIMES_USUAL = 3;

  /** Copies the stints. */
  public BoningIntervals {
    counted = List.copyOf(counted);
  }

  /** The stints that began on {@code when}. */
  public static BoningIntervals of(Collection<MonthBody> bodies, Predicate<LocalDate> when) {
    var days = new TreeMap<String, Map<LocalDate, List<BlockStart>>>();
    for (var body : bodies) {
      for (var start : body.starts()) {
        var weighing = start.weighing();
        if (when.test(weighing.date())) {
          days.computeIfAbsent(weighing.boner(), b -> new TreeMap<>())
              .computeIfAbsent(weighing.date(), d -> new ArrayList<>())
              .add(start);
        }
      }
    }
    var all = new ArrayList<BoningInterval>();
    days.values().forEach(own -> own.values().forEach(day -> read(day, all)));
    return withoutBreaks(all);
  }

  private static void read(List<BlockStart> day, List<BoningInterval> all) {
    day.sort((a, b) -> Weighing.BY_TIME.compare(a.weighing(), b.weighing()));
    var waiting = new ArrayList<BlockStart>();
    for (var start : day) {
      if (!waiting.isEmpty() && !isTogether(waiting, start)) {
        all.add(join(waiting, start.weighing()));
        waiting.clear();
      }
      waiting.add(start);
    }
  }

  private static boolean isTogether(List<BlockStart> waiting, BlockStart next) {
    var last = waiting.get(waiting.size() - 1).weighing();
    return Duration.between(last.time(), next.weighing().time()).compareTo(TOGETHER) < 0;
  }

  private static BoningInterval join(List<BlockStart> fetched, Weighing next) {
    var first = fetched.get(0).until(next);
    var weight = Weight.sum(fetched.stream().map(start -> start.weighing().net()).toList());
    return new BoningInterval(
        first.boner(), first.species(), first.item(), fetched.size(), weight, first.minutes());
  }

  private static BoningIntervals withoutBreaks(List<BoningInterval> all) {
    var usual =
        all.stream()
            .collect(
                Collectors.groupingBy(BoningIntervals::piece, TreeMap::new, Collectors.toList()));
    var counted = new ArrayList<BoningInterval>();
    for (var like : usual.values()) {
      var median =
          Spread.of(like.stream().map(BoningInterval::minutesEach).toList()).orElseThrow().median();
      like.stream().filter(s -> isWork(s, median)).forEach(counted::add);
    }
    return new BoningIntervals(counted, all.size() - counted.size());
  }

  private static boolean isWork(BoningInterval stint, BigFraction usual) {
    var each = stint.minutesEach();
    return each.compareTo(LONGEST) <= 0 && each.compareTo(usual.multiply(TIMES_USUAL)) <= 0;
  }

  private static String piece(BoningInterval stint) {
    return stint.species().id() + ' ' + stint.item();
  }

  /** The pace of all work on a species. */
  public Optional<Pace> of(Species species) {
    return Pace.of(counted.stream().filter(s -> s.species() == species).toList());
  }

  /** What a boner's time comes to, a boner and piece each; {@code boner} empty for all together. */
  Optional<Pace> of(Optional<String> boner, Species species, String item) {
    var own =
        counted.stream()
            .filter(s -> boner.isEmpty() || s.boner().equals(boner.get()))
            .filter(s -> s.species() == species && s.item().equals(item))
            .toList();
    return Pace.of(own);
  }
}
