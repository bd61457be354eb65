package gambrel.trade.decision;

import gambrel.trade.cuts.Region;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Settings;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Weighings of test weights. A scale that fails one is in doubt from its last good test before to
 * its next good one after.
 */
public final class ScaleTests {
  private final Settings settings;
  private final Map<String, NavigableSet<Instant>> passed = new HashMap<>();
  private final Map<String, List<Weighing>> failed = new HashMap<>();

  /**
   * Judges weighings of test weights.
   *
   * @param weighings earliest first
   */
  public ScaleTests(Settings settings, List<Weighing> weighings) {
    this.settings = settings;
    for (var test : weighings) {
      if (test.code().nominal().isEmpty()) {
        continue;
      }
      String scale = test.scale().id();
      if (passes(test)) {
        passed.computeIfAbsent(scale, s -> new TreeSet<>()).add(test.time().toInstant());
      } else {
        failed.computeIfAbsent(scale, s -> new ArrayList<>()).add(test);
      }
    }
  }

  /** Every failed test. */
  public List<Weighing> failed() {
    return failed.values().stream().flatMap(List::stream).sorted(Weighing.BY_TIME).toList();
  }

  /** The failed tests that put a weighing in doubt: no good test is between it and them. */
  Stream<Weighing> doubts(Weighing weighing) {
    String scale = weighing.scale().id();
    var good = passed.getOrDefault(scale, Collections.emptyNavigableSet());
    var time = weighing.time().toInstant();
    return failed.getOrDefault(scale, List.of()).stream()
        .filter(test -> isNoneBetween(good, time, test.time().toInstant()));
  }

  /** Whether no good test is at {@code time} or between it and a failed test. */
  private static boolean isNoneBetween(NavigableSet<Instant> good, Instant time, Instant failed) {
    return time.isBefore(failed)
        ? good.subSet(time, true, failed, false).isEmpty()
        : good.subSet(failed, false, time, true).isEmpty();
  }

  private boolean passes(Weighing weighing) {
    var nominal = weighing.code().nominal().map(Weight::fraction).orElseThrow();
    return weighing.net().fraction().subtract(nominal).abs().compareTo(most(weighing)) <= 0;
  }

  /** The reason for a failed test, with the expected and the found weight and the tolerance. */
  public Reason reason(Weighing test) {
    String ticket = test.ticket().isEmpty() ? test.place().toString() : test.ticket();
    return new Reason(ReasonCode.SCALE_FAILED, test.scale().id() + " " + ticket)
        .with("scale", test.scale().id())
        .with("expected", test.code().nominal().orElseThrow(), settings.unit())
        .with("found", test.net(), settings.unit())
        .with("tolerance", Weight.of(most(test)), settings.unit());
  }

  /** Whether the limit is that of a publication at hand; a scale without a class needs none. */
  public boolean isLimitPublished(Weighing test) {
    return settings.region() != Region.US
        || test.scale().accuracy().stream()
            .allMatch(a -> a.hasHandbook44Source(load(test), test.scale().divisionInKilograms()));
  }

  private BigFraction most(Weighing test) {
    return test.scale().divisionIn(settings.unit()).multiply(divisions(test));
  }

  /** The true weight of a test, in kilograms. */
  private BigDecimal load(Weighing test) {
    return settings.unit().kilograms(test.code().nominal().orElseThrow().decimal());
  }

  /** The limit in service at a test's load, in divisions; 1 for a scale without a class. */
  private int divisions(Weighing test) {
    var division = test.scale().divisionInKilograms();
    return test.scale()
        .accuracy()
        .map(
            accuracy ->
                settings.region() == Region.US
                    ? accuracy.handbook44Divisions(load(test), division)
                    : accuracy.inServiceDivisions(load(test), division))
        .orElse(1);
  }
}
