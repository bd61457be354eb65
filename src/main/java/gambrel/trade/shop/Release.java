package gambrel.trade.shop;

import gambrel.trade.notice.Place;
import java.time.OffsetDateTime;

/**
 * A person's decision about a body that waits.
 *
 * @param body the body
 * @param by who decided
 * @param on when; it has no effect before
 * @param reason why
 * @param action what was decided
 * @param place where the release stands
 */
public record Release(
    String body, String by, OffsetDateTime on, String reason, Action action, Place place) {
  /** What a release does. */
  public enum Action {
    /** Lets a held statement go as it stands. */
    RELEASE,
    /** Treats an open body as finished. */
    CLOSE,
    /** Prints the statement again with today's charges. */
    REISSUE
  }
}
