package gambrel.pages.views;

import java.util.List;

/**
 * The page of decisions. Empty parts are not shown.
 *
 * @param counted the number of bodies that the page is computed from
 * @param findings at most five, most money first
 * @param none why there are none; empty if there are some
 * @param more how many stand in the appendix, in words
 * @param leftOut which bodies the figures leave out, and why, in sentences
 * @param kilos where all weight of the month went; none without a body that was cut
 * @param five five figures; empty if none is known
 * @param sums the month in sum
 */
public record FirstPage(
    String counted,
    List<Row> findings,
    String none,
    String more,
    List<String> leftOut,
    List<FlowView> kilos,
    List<Five> five,
    List<TableView> sums) {
  /**
   * A finding.
   *
   * @param seen what was seen
   * @param sure how far to trust it
   * @param next what to do
   * @param worth money, a line for each owner
   */
  public record Row(String seen, String sure, String next, List<String> worth) {}

  /**
   * Five figures beside earlier months.
   *
   * @param heads heads of the columns after the first; the last is of the drawings
   * @param rows the figures
   */
  public record Five(List<String> heads, List<FiveRow> rows) {}

  /**
   * One of the figures.
   *
   * @param label what it is
   * @param cells the figure of each month, as it is printed
   * @param spark thirteen months as a drawing
   */
  public record FiveRow(String label, List<FiveCell> cells, Spark spark) {}

  /**
   * A figure of one month.
   *
   * @param text the figure; empty if unknown
   * @param bodies of how many bodies it is, in words; may be empty
   */
  public record FiveCell(String text, String bodies) {}

  /**
   * A small drawing of thirteen months, from left to right.
   *
   * @param width of the drawing
   * @param height of the drawing
   * @param lines months with a figure in a row, joined up: {@code x,y x,y ...}
   * @param dots a month with a figure each; the last is this month's, if it has one
   */
  public record Spark(int width, int height, List<String> lines, List<Dot> dots) {}

  /**
   * A month in a small drawing.
   *
   * @param x place
   * @param y place
   * @param now whether it is this month
   */
  public record Dot(int x, int y, boolean now) {}
}
