package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/**
 * What needs a look, and five figures against last year. Whatever is empty does not show.
 *
 * @param counted how many bodies the page is drawn from
 * @param findings at most ten, most money first
 * @param none said instead of them
 * @param more how many were left out, in words
 * @param month head of the month's column
 * @param yearAgo head of the same month's a year before
 * @param figures five
 */
public record FirstPage(
    String counted,
    List<Row> findings,
    String none,
    String more,
    String month,
    String yearAgo,
    List<Figure> figures) {
  /** Copies the lists. */
  public FirstPage {
    findings = List.copyOf(findings);
    figures = List.copyOf(figures);
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

  /**
   * A figure of the month, of the same month a year before, and of the twelve months before.
   *
   * @param label what it is
   * @param month of the month
   * @param yearAgo of a year before
   * @param before of the twelve months before
   */
  public record Figure(String label, Counted month, Counted yearAgo, Counted before) {}
}
