package gambrel.statement;

import java.util.List;

/**
 * The month's charges and payments. Whatever is empty does not show.
 *
 * @param unpaid statements not paid in full, oldest first
 * @param unpaidTotal their sum
 * @param totals of the month
 */
public record MoneyChapter(List<Unpaid> unpaid, String unpaidTotal, List<Fact> totals) {
  /** Copies the lists. */
  public MoneyChapter {
    unpaid = List.copyOf(unpaid);
    totals = List.copyOf(totals);
  }

  /**
   * A statement not paid in full.
   *
   * @param issued when
   * @param customer whose
   * @param body of which body
   * @param amount still to pay
   */
  public record Unpaid(String issued, String customer, String body, String amount) {}
}
