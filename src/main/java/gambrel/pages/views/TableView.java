package gambrel.pages.views;

import java.util.List;

/**
 * A table, ready for the template.
 *
 * @param style its classes in {@code page.css}, separated by blanks; the first is the name of the
 *     table
 * @param heads lines of column heads; may be none
 * @param rows its rows
 * @param remarks how to read it
 */
public record TableView(
    String style, List<List<Cell>> heads, List<Row> rows, List<String> remarks) {
  /**
   * A cell.
   *
   * @param text its text; may be empty
   * @param style its classes; {@code label} is the head of its row
   * @param span how many columns it takes; empty for one
   */
  public record Cell(String text, String style, String span) {
    /** A cell of one column. */
    public Cell(String text, String style) {
      this(text, style, "");
    }

    /** A cell of several columns. */
    public Cell(String text, String style, int span) {
      this(text, style, Integer.toString(span));
    }
  }

  /**
   * A row.
   *
   * @param style its classes; may be empty
   * @param cells its cells, from left to right
   */
  public record Row(String style, List<Cell> cells) {}
}
