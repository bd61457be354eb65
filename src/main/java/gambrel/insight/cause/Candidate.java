package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A change that might make a body balance.
 *
 * @param cause what would have happened
 * @param changes the rows that change, earliest first; at least one
 * @param penalty added to the cost of the change, on the scale of {@link UsualRange#strain}; higher
 *     where there is less evidence
 * @param values the evidence, by the names of its sentence
 * @param estimated whether its effect can be estimated from sums, before it is tried
 */
record Candidate(
    Cause cause,
    List<RowChange> changes,
    long penalty,
    Map<String, Value> values,
    boolean estimated) {
  /** A change of several rows without evidence of its own. */
  static Candidate of(Cause cause, List<RowChange> changes, long penalty) {
    return new Candidate(cause, changes, penalty, Map.of(), true);
  }

  /** A change of one row without evidence of its own. */
  static Candidate of(Cause cause, RowChange change, long penalty) {
    return of(cause, List.of(change), penalty);
  }

  /** A copy with this evidence. */
  Candidate with(Map<String, Value> evidence) {
    return new Candidate(cause, changes, penalty, evidence, estimated);
  }

  /** A copy whose evidence is what it is compared with. */
  Candidate comparedWith(Value witness) {
    return with(Map.of("witness", witness));
  }

  /** A copy whose effect cannot be estimated, so that it is always tried. */
  Candidate notEstimated() {
    return new Candidate(cause, changes, penalty, values, false);
  }

  /** The row that changes first. */
  RowChange first() {
    return changes.get(0);
  }

  /** All bodies that lose or get a row, or have one changed. */
  Set<String> bodies() {
    var bodies = new LinkedHashSet<String>();
    for (var change : changes) {
      bodies.add(change.weighing().body());
      bodies.add(change.body());
    }
    bodies.remove("");
    return bodies;
  }

  /** Whether it changes a weighing on the rail. */
  boolean changesRail() {
    return changes.stream().anyMatch(change -> change.weighing().step().isRail());
  }

  /** By how much the strain of its bodies would rise, estimated from sums, with its penalty. */
  long cost(RowIndex rows) {
    long cost = penalty;
    for (var shift : shifts(rows).entrySet()) {
      var facts = rows.facts(shift.getKey());
      cost += facts.strain(shift.getValue()) - facts.strain();
    }
    return cost;
  }

  /** The strain that the cutting loss of one of its bodies would have, estimated from sums. */
  long lossStrain(RowIndex rows, String body) {
    var shift = shifts(rows).getOrDefault(body, BodyFacts.Shift.NONE);
    return rows.facts(body).lossStrain(shift);
  }

  private Map<String, BodyFacts.Shift> shifts(RowIndex rows) {
    var shifts = new HashMap<String, BodyFacts.Shift>();
    for (var change : changes) {
      var weighing = change.weighing();
      if (!weighing.body().isEmpty()) {
        var facts = rows.facts(weighing.body());
        long net = weighing.net().hundredThousandths();
        // The body's own figures say in which sums the row counts, for the body that gets it too.
        shifts.merge(weighing.body(), facts.shift(weighing, -net), BodyFacts.Shift::plus);
        shifts.merge(change.body(), facts.shift(weighing, change.net()), BodyFacts.Shift::plus);
      }
    }
    return shifts;
  }
}
