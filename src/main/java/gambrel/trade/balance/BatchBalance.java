package gambrel.trade.balance;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Division;
import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Batch;
import gambrel.trade.weighing.Weighing;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Input, output and loss of a batch.
 *
 * @param batch the batch
 * @param meatIn meat in (M), from its tubs
 * @param added what was added (A); with {@code gain} the surplus of the output counts as added
 * @param out output (O), from its packs
 * @param loss M + A − O; empty while it is open
 * @param lossShare the loss, of M + A; empty while it is open, and if M + A is zero
 * @param limit the largest accepted loss, in the shop's unit
 * @param uncertaintySquared U² of the loss from the scales' divisions (k = 2)
 * @param state open, out of balance or balanced
 * @param late whether it is open after its due date, or too long after its last row
 * @param meatInByBody meat in by body; the shop's own under its reserved id
 * @param partByBody each body's part of the output's meat, in whole thousandths; none while open
 * @param weighings its rows, earliest first
 */
public record BatchBalance(
    Batch batch,
    Weight meatIn,
    Weight added,
    Weight out,
    Optional<Weight> loss,
    Optional<Share> lossShare,
    BigFraction limit,
    BigFraction uncertaintySquared,
    State state,
    boolean late,
    SortedMap<String, Weight> meatInByBody,
    SortedMap<String, Weight> partByBody,
    List<Weighing> weighings) {
  /** The state of a batch. */
  public enum State implements FileWord {
    /** Not packed yet, or still being weighed. */
    OPEN,
    /** Finished; no meat went in, or the loss is below −U or above the limit. */
    OUT,
    /** Finished; the loss is within its limits. */
    BALANCED
  }

  /** Copies the collections. */
  public BatchBalance {
    meatInByBody = ByteOrder.sorted(meatInByBody);
    partByBody = ByteOrder.sorted(partByBody);
    weighings = List.copyOf(weighings);
  }

  /** Whether the batch is not finished. */
  public boolean isOpen() {
    return state == State.OPEN;
  }

  /** Whether the batch is finished and out of balance. */
  public boolean isOut() {
    return state == State.OUT;
  }

  /** The meat in the output: the sum of all parts. */
  public Weight meatOut() {
    return Weight.sum(partByBody.values());
  }

  /** What the output weighs more than the meat in it: seasoning, water; zero while open. */
  public Weight addedOut() {
    long more = out.thousandths() - meatOut().thousandths();
    return Weight.ofThousandths(isOpen() ? 0 : Math.max(0, more));
  }

  /** A body's part of {@link #addedOut}, by the meat that each put in, in whole thousandths. */
  public Weight addedOutOf(String body) {
    var shares = new HashMap<String, BigFraction>();
    meatInByBody.forEach((other, weight) -> shares.put(other, weight.fraction()));
    boolean none = meatIn.isZero() || !shares.containsKey(body);
    return none
        ? Weight.ZERO
        : Weight.ofThousandths(Division.divide(addedOut().thousandths(), shares).get(body));
  }

  /** The meat that came from a body; zero if none did. */
  public Weight meatInOf(String body) {
    return meatInByBody.getOrDefault(body, Weight.ZERO);
  }

  /** A body's part of the meat in the output; zero if it has none. */
  public Weight partOf(String body) {
    return partByBody.getOrDefault(body, Weight.ZERO);
  }
}
