package gambrel.trade.shop;

import gambrel.trade.notice.Place;
import java.time.OffsetDateTime;

/**
 * A person's decision about a body.
 *
 * @param body the body
 * @param by the person who decided
 * @param on the moment of the decision; the release has no effect before it
 * @param reason the reason
 * @param action the decision
 * @param place file and line of the release
 */
public record Release(
    String body, String by, OffsetDateTime on, String reason, Action action, Place place) {
  /** The decisions. */
  public enum Action {
    /** Issues a held statement as it is. */
    RELEASE,
    /** Treats an open body as finished. */
    CLOSE,
    /** Prints the statement again with today's charges. */
    REISSUE
  }
}
