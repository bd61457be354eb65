package gambrel.cause;

import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds a hook, gambrel or roller that hung on the scale at one step and not at the other. */
final class Hook implements Finder {
  private static final long PENALTY = 200;

  private final Traces traces;
  private final Tares tares;

  Hook(Traces traces, Tares tares) {
    this.traces = traces;
    this.tares = tares;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var step : List.of(Step.HOT, Step.COLD, Step.AGED)) {
      var rows =
          suspect.balance().weighings().of(step).stream().filter(traces::isUntouched).toList();
      for (var tare : weights(rows)) {
        rows.forEach(row -> add(List.of(row), tare, candidates));
        if (rows.size() > 1) {
          add(rows, tare, candidates);
        }
      }
    }
    return candidates;
  }

  private void add(List<Weighing> rows, BigDecimal tare, List<Candidate> to) {
    var touches = rows.stream().flatMap(row -> tares.take(row, tare).stream()).toList();
    if (touches.size() == rows.size()) {
      to.add(
          Candidate.of(Cause.HOOK, touches, PENALTY)
              .because(tare.toPlainString() + " " + rows.get(0).unit().id()));
    }
  }

  /** Known hook weights: what rows of such codes show as tare, and the tares of rail codes. */
  private Set<BigDecimal> weights(List<Weighing> rows) {
    var weights = new LinkedHashSet<BigDecimal>();
    if (rows.isEmpty() || rows.stream().anyMatch(row -> tares.lacking(row).isEmpty() && isTared(row))) {
      return weights;
    }
    var unit = traces.night().shop().settings().unit();
    rows.forEach(row -> tares.lacking(row).ifPresent(l -> weights.add(Tares.plain(l.tare()))));
    traces.night().shop().codes().stream()
        .filter(code -> code.step().isRail() && code.tare().hundredThousandths() > 0)
        .map(code -> unit.convert(code.tare().decimal(), rows.get(0).unit()))
        .forEach(tare -> weights.add(Tares.plain(Exact.round(tare, Weight.DECIMALS))));
    return weights;
  }

  /** A row that shows a tare, or comes gross and has its code's taken off, was tared. */
  private boolean isTared(Weighing row) {
    return Optional.of(traces.cell(row, gambrel.weighing.Field.NET)).filter(String::isEmpty).isPresent()
        || !traces.cell(row, gambrel.weighing.Field.TARE).isEmpty();
  }
}
