package gambrel.insight.cause;

import gambrel.trade.notice.NamedValues;
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
 * @param touches the rows that it touches, earliest first
 * @param penalty how much less it is to be believed than a change with all evidence for it, on the
 *     scale of {@link UsualRange#strain}
 * @param values the evidence for it, by the names of its sentence
 * @param estimated whether its effect can be estimated from sums, before it is tried
 */
record Candidate(
    Cause cause,
    List<RowChange> touches,
    long penalty,
    Map<String, Value> values,
    boolean estimated)
    implements NamedValues<Candidate> {
  /** Copies the touches and values. */
  Candidate {
    touches = List.copyOf(touches);
    values = Map.copyOf(values);
  }

  static Candidate of(Cause cause, List<RowChange> touches, long penalty) {
    return new Candidate(cause, touches, penalty, Map.of(), true);
  }

  static Candidate of(Cause cause, RowChange touch, long penalty) {
    return of(cause, List.of(touch), penalty);
  }

  @Override
  public Candidate with(String name, Value value) {
    var more = new HashMap<>(values);
    more.put(name, value);
    return new Candidate(cause, touches, penalty, more, estimated);
  }

  /** A copy whose effect cannot be estimated, so that it is tried. */
  Candidate untold() {
    return new Candidate(cause, touches, penalty, values, false);
  }

  /** All bodies that lose or get a row, or have one changed. */
  Set<String> bodies() {
    var bodies = new LinkedHashSet<String>();
    for (var touch : touches) {
      bodies.add(touch.weighing().body());
      bodies.add(touch.bodyThen());
    }
    bodies.remove("");
    return bodies;
  }
}
