package gambrel.insight.cause;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A batch, and how far its loss is from what batches usually lose.
 *
 * @param usual what its loss is compared with
 * @param balance empty if a change leaves it without a weighing
 */
record BatchFacts(Usual usual, Optional<BatchBalance> balance) {
  private static final int KNEE = 4;

  /**
   * By how much a change raises the sums of a batch, in hundred-thousandths.
   *
   * @param in meat in and what was added
   * @param out its packs
   */
  record Shift(long in, long out) {
    static final Shift NONE = new Shift(0, 0);

    Shift plus(Shift other) {
      return new Shift(in + other.in, out + other.out);
    }

    /** A weighing of the batch with so much more on it. */
    static Shift of(Weighing weighing, long more) {
      return weighing.step() == Step.PACK ? new Shift(0, more) : new Shift(more, 0);
    }
  }

  /** How odd its loss is with {@code shift} in its sums; 0 while it is open or has no weighing. */
  long strain(Shift shift) {
    return balance
        .filter(b -> !b.isOpen())
        .map(
            b ->
                loss(b, shift)
                    .map(loss -> usual.batchLoss().strain(loss, KNEE))
                    .orElse(BodyFacts.BALANCED))
        .orElse(0L);
  }

  /** How far its loss is from the usual; empty while it is open, or if nothing went in. */
  Optional<Long> distance() {
    return balance
        .filter(b -> !b.isOpen())
        .flatMap(b -> loss(b, Shift.NONE))
        .map(loss -> usual.batchLoss().distance(loss));
  }

  /** A loss in millionths of what went in; empty if nothing went in. */
  private static Optional<Long> loss(BatchBalance balance, Shift shift) {
    long in = balance.meatIn().plus(balance.added()).hundredThousandths() + shift.in();
    long lost = in - balance.out().hundredThousandths() - shift.out();
    return Usual.millionths(BigFraction.of(lost), BigFraction.of(in));
  }
}
