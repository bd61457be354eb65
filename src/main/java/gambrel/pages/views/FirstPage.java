package gambrel.pages.views;

import java.util.List;

/**
 * Findings, and five figures beside last year's. Empty parts are not shown.
 *
 * @param counted the number of bodies that the page is computed from
 * @param findings at most ten, most money first
 * @param none why there are none; empty if there are some
 * @param more how many were left out, in words
 * @param five five figures; empty if none is known
 */
public record FirstPage(
    String counted, List<Row> findings, String none, String more, List<TableView> five) {
  /**
   * A finding.
   *
   * @param seen what was seen
   * @param sure how far to trust it
   * @param next what to do
   * @param worth money, a line for each owner
   */
  public record Row(String seen, String sure, String next, List<String> worth) {}
}
