package gambrel.trade.decision;

import java.util.List;

/**
 * A body's state and the reasons for it.
 *
 * @param state its state
 * @param reasons why it is open or held, in order
 * @param released reasons that would hold it and that a release covers
 */
public record Decision(State state, List<Reason> reasons, List<Reason> released) {
  /** Copies the lists. */
  public Decision {
    reasons = List.copyOf(reasons);
    released = List.copyOf(released);
  }
}
