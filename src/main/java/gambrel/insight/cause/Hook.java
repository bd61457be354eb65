package gambrel.insight.cause;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds a hook, gambrel or roller that hung on the scale at one step and not at the other. */
final class Hook implements Finder {
  private static final long PENALTY = 200;

  /** Parts of a body shrink alike; so many millionths of difference cost one hundredth. */
  private static final long UNEVEN = 100;

  private static final long MOST_UNEVEN = 300;

  private final RowIndex traces;
  private final Tares tares;

  Hook(RowIndex traces, Tares tares) {
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
        var other = suspect.balance().weighings().of(step == Step.COLD ? Step.HOT : Step.COLD);
        rows.forEach(row -> add(List.of(row), rows, other, tare, candidates));
        if (rows.size() > 1) {
          add(rows, rows, other, tare, candidates);
        }
      }
    }
    return candidates;
  }

  private void add(
      List<Weighing> rows,
      List<Weighing> all,
      List<Weighing> other,
      BigDecimal tare,
      List<Candidate> to) {
    var touches = rows.stream().flatMap(row -> tares.take(row, tare).stream()).toList();
    if (touches.size() == rows.size()) {
      to.add(
          Candidate.of(Cause.HOOK, touches, PENALTY + unevenness(touches, all, other))
              .with("witness", new Value.Shown(Tares.plain(tare), rows.get(0).unit())));
    }
  }

  /** How differently the parts would have shrunk from one step to the other. */
  private long unevenness(List<RowChange> touches, List<Weighing> all, List<Weighing> other) {
    if (all.size() != other.size()) {
      return 0;
    }
    var unit = traces.night().shop().settings().unit();
    var then = new HashMap<Weighing, Long>();
    all.forEach(row -> then.put(row, row.net().hundredThousandths()));
    touches.forEach(touch -> then.put(touch.weighing(), touch.netThen(unit)));
    var nets = then.values().stream().sorted().toList();
    var others = other.stream().map(w -> w.net().hundredThousandths()).sorted().toList();
    long least = Long.MAX_VALUE;
    long most = 0;
    for (int i = 0; i < nets.size(); i++) {
      long share = nets.get(i) * 1_000_000 / Math.max(1, others.get(i));
      least = Math.min(least, share);
      most = Math.max(most, share);
    }
    return Math.min(MOST_UNEVEN, (most - least) / UNEVEN);
  }

  /** Known hook weights: what rows of such codes show as tare, and the tares of rail codes. */
  private Set<BigDecimal> weights(List<Weighing> rows) {
    var weights = new LinkedHashSet<BigDecimal>();
    boolean tared = rows.stream().anyMatch(row -> tares.lacking(row).isEmpty() && isTared(row));
    if (rows.isEmpty() || tared) {
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
    return traces.cell(row, Field.NET).isEmpty() || !traces.cell(row, Field.TARE).isEmpty();
  }
}
