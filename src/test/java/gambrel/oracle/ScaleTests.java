package gambrel.oracle;

import java.time.Instant;
import java.util.List;

/** Test weights: whether a scale was to be trusted at a time. */
final class ScaleTests {
  private final Setup setup;
  private final List<Row> tests;

  ScaleTests(Setup setup, List<Row> rows) {
    this.setup = setup;
    tests = rows.stream().filter(r -> r.counts() && r.is("test")).sorted(Row.BY_TIME).toList();
  }

  /** Whether the weighing lies between a failed test's neighbouring good ones. */
  boolean doubts(Row weighing) {
    return !failed(weighing).isEmpty();
  }

  /** The failed tests between whose neighbouring good ones the weighing lies. */
  List<Row> failed(Row weighing) {
    var own = tests.stream().filter(t -> t.scale.id().equals(weighing.scale.id())).toList();
    return own.stream().filter(test -> !passed(test) && touches(own, test, weighing.time)).toList();
  }

  private boolean touches(List<Row> own, Row failed, Instant time) {
    Instant from = null;
    Instant to = null;
    for (var test : own) {
      if (passed(test) && test.time.isBefore(failed.time)) {
        from = test.time;
      } else if (passed(test) && test.time.isAfter(failed.time) && to == null) {
        to = test.time;
      }
    }
    return (from == null || time.isAfter(from)) && (to == null || time.isBefore(to));
  }

  private boolean passed(Row test) {
    var scale = test.scale;
    var load = test.nominal.multiply(Num.factor(setup.unit, scale.unit())).divide(scale.division());
    boolean us = setup.setting("region", "").equals("us");
    int divisions = !scale.hasClass() ? 1 : us ? scale.handbook44(load) : scale.oiml(load);
    var gap = test.net.subtract(test.nominal).abs();
    return gap.compareTo(scale.divisionIn(setup.unit).multiply(divisions)) <= 0;
  }
}
