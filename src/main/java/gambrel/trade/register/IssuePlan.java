package gambrel.trade.register;

import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Night;
import java.util.List;
import java.util.function.Function;

/**
 * The statements to issue tonight, and the drafts to hold.
 *
 * @param issue the statements to issue, in the order of their numbers
 * @param held the drafts of held statements
 * @param notices the notices about issuing and about earlier statements
 */
public record IssuePlan(List<Planned> issue, List<Planned> held, List<Notice> notices) {
  /** Copies the lists. */
  public IssuePlan {
    issue = List.copyOf(issue);
    held = List.copyOf(held);
    notices = List.copyOf(notices);
  }

  /**
   * The plan of a night, given the statements issued before.
   *
   * @param digest the SHA-256 of figures, as the register holds it
   */
  public static IssuePlan of(Night night, Register register, Function<Figures, String> digest) {
    return new IssuePlanner(night, register, digest).plan();
  }

  /**
   * The night with every body held of which a statement would go out and that a charge or payment
   * could concern which cannot be read.
   */
  public static Night heldForMoney(
      Night night, Register register, Function<Figures, String> digest) {
    return new IssuePlanner(night, register, digest).heldForMoney();
  }

  /** The plan of a night that may issue nothing: the drafts alone. */
  public IssuePlan withoutIssues() {
    return new IssuePlan(List.of(), held, List.of());
  }
}
