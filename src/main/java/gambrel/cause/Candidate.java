package gambrel.cause;

import gambrel.notice.Value;
import gambrel.weighing.Weighing;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A change that might make a body balance.
 *
 * @param cause what would have happened
 * @param touches the rows that it touches, earliest first
 * @param penalty how much less it is to be believed than a change with all evidence for it, on the
 *     scale of {@link Band#strain}
 * @param witness another row, tare or weight that speaks for it, as evidence needs it
 * @param estimated whether sums tell beforehand what it does
 */
record Candidate(
    Cause cause,
    List<Touch> touches,
    long penalty,
    Optional<Witness> witness,
    boolean estimated) {
  /**
   * What speaks for a change.
   *
   * @param weighing another row
   * @param value a tare, or what others weigh
   */
  record Witness(Optional<Weighing> weighing, Optional<Value> value) {}

  /** Copies the touches. */
  Candidate {
    touches = List.copyOf(touches);
  }

  static Candidate of(Cause cause, List<Touch> touches, long penalty) {
    return new Candidate(cause, touches, penalty, Optional.empty(), true);
  }

  static Candidate of(Cause cause, Touch touch, long penalty) {
    return of(cause, List.of(touch), penalty);
  }

  Candidate because(Weighing weighing) {
    return with(new Witness(Optional.of(weighing), Optional.empty()));
  }

  Candidate because(Value value) {
    return with(new Witness(Optional.empty(), Optional.of(value)));
  }

  private Candidate with(Witness witness) {
    return new Candidate(cause, touches, penalty, Optional.of(witness), estimated);
  }

  /** The same, to be tried out because sums do not tell. */
  Candidate untold() {
    return new Candidate(cause, touches, penalty, witness, false);
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
