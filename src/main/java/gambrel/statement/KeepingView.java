package gambrel.statement;

import java.util.List;

/**
 * How to keep and cook what is in the boxes.
 *
 * @param rows only for what this household got; may be empty
 * @param fridge head of the column: at or below which temperature
 * @param freezer head of the column: at or below which temperature
 * @param source whose advice it is
 */
public record KeepingView(List<Row> rows, String fridge, String freezer, String source) {
  /** Copies the rows. */
  public KeepingView {
    rows = List.copyOf(rows);
  }

  /**
   * A kind of food.
   *
   * @param food what it is
   * @param fridge how long it keeps in the fridge
   * @param freezer how long it stays good in the freezer
   * @param cook how hot its middle must get; or empty
   */
  public record Row(String food, String fridge, String freezer, String cook) {}
}
