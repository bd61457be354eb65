package gambrel.balance;

import gambrel.measure.Weight;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.List;

/**
 * All weighings of one hung part at one step.
 *
 * @param item the part
 * @param step the step
 * @param number how many of the part they take up
 * @param weight the sum of the weighings
 * @param weighings the weighings
 */
public record RailPiece(
    String item, Step step, int number, Weight weight, List<Weighing> weighings) {
  /** Copies the weighings. */
  public RailPiece {
    weighings = List.copyOf(weighings);
  }

  /** All weighings of one hung part at one step. */
  RailPiece(String item, Step step, int number, List<Weighing> weighings) {
    this(item, step, number, Weighing.total(weighings), weighings);
  }
}
