package gambrel.trade.register;

import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Night;
import java.util.List;
import java.util.function.Function;

/**
 * Which statements go out tonight, and which are held.
 *
 * @param issue those that go out
 * @param held drafts of those that wait
 * @param notices what the plan has to say
 */
public record IssuePlan(List<Planned> issue, List<Planned> held, List<Notice> notices) {
  /** Copies the lists. */
  public IssuePlan {
    issue = List.copyOf(issue);
    held = List.copyOf(held);
    notices = List.copyOf(notices);
  }

  /**
   * Plans a night over what was issued before.
   *
   * @param digest the SHA-256 of figures, as the register holds it
   */
  public static IssuePlan of(Night night, Register register, Function<Figures, String> digest) {
    return new IssuePlanner(night, register, digest).plan();
  }

  /** The plan of a night on which nothing may go out: the drafts alone. */
  public IssuePlan withoutIssues() {
    return new IssuePlan(List.of(), held, List.of());
  }
}
