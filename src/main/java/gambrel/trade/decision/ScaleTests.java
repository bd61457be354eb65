package gambrel.trade.decision;

import gambrel.trade.cuts.Region;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Settings;
import gambrel.trade.weighing.Weighing;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Weighings of test weights. A scale that fails one is in doubt from its last good test before to
 * its next good one after.
 */
public final class ScaleTests {
  private final Settings settings;
  private final Map<String, List<Test>> byScale = new HashMap<>();
  private final Map<String, List<Doubt>> doubts = new HashMap<>();

  /**
   * Judges weighings of test weights.
   *
   * @param weighings earliest first
   */
  public ScaleTests(Settings settings, List<Weighing> weighings) {
    this.settings = settings;
    weighings.stream()
        .filter(w -> w.code().nominal().isPresent())
        .forEach(
            w ->
                byScale
                    .computeIfAbsent(w.scale().id(), s -> new ArrayList<>())
                    .add(new Test(w, passes(w))));
    byScale.forEach((scale, tests) -> doubts.put(scale, doubts(tests)));
  }

  private record Test(Weighing weighing, boolean passed) {
    OffsetDateTime time() {
      return weighing.time();
    }
  }

  /** Every failed test. */
  public List<Weighing> failed() {
    return byScale.values().stream()
        .flatMap(List::stream)
        .filter(test -> !test.passed())
        .map(Test::weighing)
        .sorted(Weighing.BY_TIME)
        .toList();
  }

  /** The failed test that puts a weighing in doubt. */
  Optional<Weighing> doubt(Weighing weighing) {
    return doubts.getOrDefault(weighing.scale().id(), List.of()).stream()
        .filter(doubt -> doubt.covers(weighing.time()))
        .map(Doubt::failed)
        .findFirst();
  }

  /** The time from the last good test before a failed one to the next good one after it. */
  private record Doubt(
      Weighing failed, Optional<OffsetDateTime> after, Optional<OffsetDateTime> before) {
    boolean covers(OffsetDateTime time) {
      return after.filter(t -> !time.isAfter(t)).isEmpty()
          && before.filter(t -> !time.isBefore(t)).isEmpty();
    }
  }

  private static List<Doubt> doubts(List<Test> tests) {
    var doubts = new ArrayList<Doubt>();
    for (int i = 0; i < tests.size(); i++) {
      if (!tests.get(i).passed()) {
        doubts.add(new Doubt(tests.get(i).weighing(), good(tests, i, -1), good(tests, i, 1)));
      }
    }
    return doubts;
  }

  /** When the nearest good test was, at another time than test {@code from}, in one direction. */
  private static Optional<OffsetDateTime> good(List<Test> tests, int from, int step) {
    for (int i = from + step; i >= 0 && i < tests.size(); i += step) {
      var test = tests.get(i);
      if (test.passed() && !test.time().isEqual(tests.get(from).time())) {
        return Optional.of(test.time());
      }
    }
    return Optional.empty();
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
        || test.scale().accuracy().filter(a -> !a.hasHandbook44Source(load(test))).isEmpty();
  }

  private BigFraction most(Weighing test) {
    return division(test.scale()).multiply(divisions(test.scale(), load(test)));
  }

  /** The true weight of a test, in the scale's divisions. */
  private BigFraction load(Weighing test) {
    var nominal = test.code().nominal().map(Weight::fraction).orElseThrow();
    return nominal.divide(division(test.scale()));
  }

  private BigFraction division(Scale scale) {
    return scale.unit().convert(scale.division(), settings.unit());
  }

  /** The limit in service at a load, in divisions; one division for a scale without a class. */
  private int divisions(Scale scale, BigFraction load) {
    return scale
        .accuracy()
        .map(
            accuracy ->
                settings.region() == Region.US
                    ? accuracy.handbook44Divisions(load)
                    : accuracy.inServiceDivisions(load))
        .orElse(1);
  }
}
