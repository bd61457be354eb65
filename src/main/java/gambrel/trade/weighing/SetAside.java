package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import java.util.List;

/**
 * A row that waits for a person.
 *
 * @param notice why, and where it stands
 * @param bodies the bodies that it names; more than one where a tag is not unique
 * @param effective whether it is dated by the run's clock, so that it holds those bodies
 */
public record SetAside(Notice notice, List<String> bodies, boolean effective) {
  /** Copies the bodies. */
  public SetAside {
    bodies = List.copyOf(bodies);
  }

  /** What tells this row from others, for a release: scale and ticket, or the place. */
  public String name() {
    return notice.ticket().isEmpty()
        ? notice.place().toString()
        : notice.scale() + " " + notice.ticket();
  }
}
