package gambrel.trade.balance;

import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;

/**
 * All weighings of one hung part at one step.
 *
 * @param item the part
 * @param step the step
 * @param number the number of the part that they cover
 * @param weighings the weighings
 */
public record PartWeight(String item, Step step, int number, List<Weighing> weighings) {
  /** Copies the weighings. */
  public PartWeight {
    weighings = List.copyOf(weighings);
  }

  /** The sum of the weighings. */
  public Weight weight() {
    return Weighing.total(weighings);
  }
}
