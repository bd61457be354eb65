package gambrel.statement;

import java.util.List;

/**
 * What a revision changes.
 *
 * @param sentence which revision it replaces, and of when
 * @param rows every figure that differs
 */
public record ChangesView(String sentence, List<Row> rows) {
  /** Copies the rows. */
  public ChangesView {
    rows = List.copyOf(rows);
  }

  /**
   * A figure that differs.
   *
   * @param item what it is
   * @param was on the statement that is replaced
   * @param now on this one
   */
  public record Row(String item, String was, String now) {}
}
