package gambrel.balance;

import gambrel.measure.ByteOrder;
import gambrel.measure.Weight;
import gambrel.shop.Batch;
import gambrel.weighing.Weighing;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What went into a batch and what came out.
 *
 * @param batch the batch
 * @param meatIn meat in (M), from its tubs
 * @param added what was added (A); with {@code gain} the surplus of the output counts as added
 * @param out output (O), from its packs
 * @param limit the most that the shop lets a batch lose, in its unit
 * @param resolutionSquared U² of M + A − O from the scales' divisions (k = 2)
 * @param state whether it is finished and balances
 * @param late whether it is open past its time
 * @param meatInByBody meat in by body; the shop's own under its reserved id
 * @param partByBody each body's part of the output's meat, in whole thousandths; none while open
 * @param weighings its rows, earliest first
 */
public record BatchBalance(
    Batch batch,
    Weight meatIn,
    Weight added,
    Weight out,
    BigFraction limit,
    BigFraction resolutionSquared,
    BatchState state,
    boolean late,
    SortedMap<String, Weight> meatInByBody,
    SortedMap<String, Weight> partByBody,
    List<Weighing> weighings) {
  /** Copies the collections. */
  public BatchBalance {
    meatInByBody = Collections.unmodifiableSortedMap(ByteOrder.sorted(meatInByBody));
    partByBody = Collections.unmodifiableSortedMap(ByteOrder.sorted(partByBody));
    weighings = List.copyOf(weighings);
  }

  /** M + A − O, once finished. */
  public Optional<Weight> loss() {
    return isOpen() ? Optional.empty() : Optional.of(meatIn.plus(added).minus(out));
  }

  /** The loss over what went in, as a fraction, once finished. */
  public Optional<BigFraction> lossShare() {
    var in = meatIn.plus(added);
    return in.isZero()
        ? Optional.empty()
        : loss().map(loss -> loss.fraction().divide(in.fraction()));
  }

  /** Whether it is not finished. */
  public boolean isOpen() {
    return state == BatchState.OPEN;
  }

  /** The meat that a body put in, zero if none. */
  public Weight meatInOf(String body) {
    return meatInByBody.getOrDefault(body, Weight.ZERO);
  }

  /** The part of a body, zero if it has none. */
  public Weight partOf(String body) {
    return partByBody.getOrDefault(body, Weight.ZERO);
  }
}
