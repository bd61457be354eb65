package gambrel.trade.sending;

import java.util.List;

/**
 * What is to be mailed.
 *
 * @param letters the messages, by customer, then by night
 * @param unsent the statements that do not go out by themselves
 */
public record MailPlan(List<Letter> letters, List<Unsent> unsent) {
  /** Copies the lists. */
  public MailPlan {
    letters = List.copyOf(letters);
    unsent = List.copyOf(unsent);
  }
}
