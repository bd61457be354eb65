package gambrel.trade.account;

import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What one customer gets of a body.
 *
 * @param customer the customer's id
 * @param share the customer's share of the body; zero for a customer with outright packs only
 * @param lines item by item, in tree order
 * @param batchParts the customer's part of each batch, in order of batch id
 */
public record Entitlement(
    String customer, BigFraction share, List<Line> lines, List<BatchPart> batchParts) {
  /** Copies the lists. */
  public Entitlement {
    lines = List.copyOf(lines);
    batchParts = List.copyOf(batchParts);
  }

  /**
   * The customer's part of one item.
   *
   * @param item the item
   * @param kind what the item counts as
   * @param weight in whole thousandths
   * @param packs the number of packs; empty where a part of the weight is a share
   * @param outright the weight of packs that name the customer
   */
  public record Line(
      String item, Kind kind, Weight weight, Optional<Integer> packs, Weight outright) {
    /** Whether it is offal, outside the take-home weight. */
    public boolean isOffal() {
      return kind == Kind.OFFAL;
    }

    /** The part of the weight that is a share. */
    public Weight shared() {
      return weight.minus(outright);
    }
  }

  /**
   * The customer's part of a batch's meat.
   *
   * @param batch the batch's id
   * @param weight of the meat, in whole thousandths
   * @param added weight of what was added to it, in whole thousandths
   */
  public record BatchPart(String batch, Weight weight, Weight added) {
    /** What the part weighs packed. */
    public Weight packed() {
      return weight.plus(added);
    }
  }

  /** Take-home weight: all lines but offal, and the batch parts. */
  public Weight takeHome() {
    var batches = Weight.sum(batchParts.stream().map(BatchPart::weight).toList());
    return sum(line -> !line.isOffal(), Line::weight).plus(batches);
  }

  /** The bone and fat in the take-home weight. */
  public Weight boneAndFat() {
    return sum(line -> line.kind().isBoneOrFat(), Line::weight);
  }

  /** The weight of packs that name the customer, offal left out. */
  public Weight outright() {
    return sum(line -> !line.isOffal(), Line::outright);
  }

  /** The weight of offal. */
  public Weight offal() {
    return sum(Line::isOffal, Line::weight);
  }

  /** The weight of what was added to the meat of batches: seasoning, water. */
  public Weight added() {
    return Weight.sum(batchParts.stream().map(BatchPart::added).toList());
  }

  /** All that is packed, as a scale shows it: take-home, offal and what was added. */
  public Weight boxes() {
    return takeHome().plus(offal()).plus(added());
  }

  private Weight sum(Predicate<Line> which, Function<Line, Weight> weight) {
    return Weight.sum(lines.stream().filter(which).map(weight).toList());
  }

  /** Whether the customer owns the whole body. */
  public boolean isSoleOwner() {
    return share.equals(BigFraction.ONE);
  }

  /** Whether the customer has no share of the body, only packs that name the customer. */
  public boolean isOutrightOnly() {
    return share.equals(BigFraction.ZERO);
  }
}
