package gambrel.owner;

import gambrel.measure.Weight;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What one customer gets of a body.
 *
 * @param customer the customer's id
 * @param share their share of the body; zero for somebody with outright packs only
 * @param lines item by item, in tree order
 * @param batchParts their part of each batch, by batch id order
 */
public record Entitlement(
    String customer, BigFraction share, List<Line> lines, List<BatchPart> batchParts) {
  /** Copies the lists. */
  public Entitlement {
    lines = List.copyOf(lines);
    batchParts = List.copyOf(batchParts);
  }

  /**
   * What they get of one item.
   *
   * @param item the item
   * @param offal whether it is offal, outside the take-home weight
   * @param weight in whole thousandths
   * @param packs how many packs are theirs; empty where a part of the weight is a share
   * @param outright the part of the weight that was packed for them by name
   */
  public record Line(
      String item, boolean offal, Weight weight, Optional<Integer> packs, Weight outright) {}

  /**
   * What they get of a batch's meat.
   *
   * @param batch the batch's id
   * @param weight in whole thousandths
   */
  public record BatchPart(String batch, Weight weight) {}

  /** Take-home weight: all lines but offal, and the batch parts. */
  public Weight takeHome() {
    var total = Weight.ZERO;
    for (var line : lines) {
      total = line.offal() ? total : total.plus(line.weight());
    }
    for (var part : batchParts) {
      total = total.plus(part.weight());
    }
    return total;
  }

  /** Whether they own the whole body. */
  public boolean isSoleOwner() {
    return share.equals(BigFraction.ONE);
  }

  /** Whether they own no share, only packs that were put up for them. */
  public boolean isOutrightOnly() {
    return share.equals(BigFraction.ZERO);
  }
}
