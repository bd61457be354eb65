package gambrel.pages.views;

import java.util.List;

/**
 * What needs a look, and five figures against last year. Whatever is empty does not show.
 *
 * @param counted how many bodies the page is drawn from
 * @param findings at most ten, most money first
 * @param none said instead of them
 * @param more how many were left out, in words
 * @param five five figures; empty if none is known
 */
public record FirstPage(
    String counted, List<Row> findings, String none, String more, List<TableView> five) {
  /** Copies the lists. */
  public FirstPage {
    findings = List.copyOf(findings);
    five = List.copyOf(five);
  }

  /**
   * A finding.
   *
   * @param seen the evidence
   * @param sure how far to trust it
   * @param next what to do
   * @param worth money, a line for each who bears it
   */
  public record Row(String seen, String sure, String next, List<String> worth) {
    /** Copies the lines. */
    public Row {
      worth = List.copyOf(worth);
    }
  }
}
