package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import java.util.List;

/**
 * A row that waits for a person.
 *
 * @param notice why the row waits, and its place
 * @param bodies the bodies that the row may name; more than one if a tag is not unique
 * @param batch the batch that the row names, or empty
 * @param effective whether the row has taken effect, so that it holds these bodies and those of the
 *     batch
 */
public record SetAside(Notice notice, List<String> bodies, String batch, boolean effective) {
  /** Copies the bodies. */
  public SetAside {
    bodies = List.copyOf(bodies);
  }

  /** The name of this row for a release: scale and ticket, or the place if it has no ticket. */
  public String name() {
    return notice.ticket().isEmpty()
        ? notice.place().toString()
        : notice.scale() + " " + notice.ticket();
  }
}
