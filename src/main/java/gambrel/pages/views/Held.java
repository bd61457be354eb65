package gambrel.pages.views;

import java.util.List;

/**
 * A body that is held.
 *
 * @param body its id and kind
 * @param customer its owners and the customers who get packs of it
 * @param reason why it is held, with the figures
 * @param advice what to do
 * @param likely what probably went wrong, best first; may be empty
 */
public record Held(
    String body, String customer, String reason, String advice, List<Likely> likely) {
  /**
   * What probably went wrong.
   *
   * @param evidence why, in words
   * @param advice what to do about it, in words
   * @param lines rows to paste into the corrections; may be empty
   */
  public record Likely(String evidence, String advice, List<String> lines) {}
}
