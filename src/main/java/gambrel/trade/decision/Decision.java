package gambrel.trade.decision;

import java.util.List;

/**
 * Where a body stands and why.
 *
 * @param state where it stands
 * @param reasons why it is open or held, in order
 * @param released reasons that a person has released
 */
public record Decision(State state, List<Reason> reasons, List<Reason> released) {
  /** Copies the lists. */
  public Decision {
    reasons = List.copyOf(reasons);
    released = List.copyOf(released);
  }
}
