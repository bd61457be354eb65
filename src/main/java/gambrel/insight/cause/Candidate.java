package gambrel.insight.cause;

import gambrel.trade.notice.NamedValues;
import gambrel.trade.notice.Phrase;
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
 * @param penalty added to the cost of the change, on the scale of {@link Usual.Range#strain};
 *     higher where there is less evidence
 * @param evidence the sentence that tells it, with the values that only its finder knows
 * @param estimated whether its effect can be estimated from sums, before it is tried
 */
record Candidate(
    Cause cause, List<RowChange> changes, long penalty, Phrase evidence, boolean estimated)
    implements NamedValues<Candidate> {
  /** A change of several rows, told by the only sentence of its cause. */
  static Candidate of(Cause cause, List<RowChange> changes, long penalty) {
    return new Candidate(cause, changes, penalty, Phrase.of("LIKELY_CAUSE." + cause), true);
  }

  /** A change of one row, told by the only sentence of its cause. */
  static Candidate of(Cause cause, RowChange change, long penalty) {
    return of(cause, List.of(change), penalty);
  }

  /** A copy told by one of several sentences of its cause. */
  Candidate variant(String variant) {
    return new Candidate(
        cause,
        changes,
        penalty,
        new Phrase("LIKELY_CAUSE." + cause + '.' + variant, evidence.values()),
        estimated);
  }

  /** A copy with one more value of its sentence. */
  @Override
  public Candidate with(String name, Value value) {
    return new Candidate(cause, changes, penalty, evidence.with(name, value), estimated);
  }

  /** A copy whose effect cannot be estimated, so that it is always tried. */
  Candidate notEstimated() {
    return new Candidate(cause, changes, penalty, evidence, false);
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
