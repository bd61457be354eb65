package gambrel.trade.balance;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Division;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Batch;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import gambrel.trade.weighing.Weighings;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Balances batches and divides the meat in their output among the bodies it came from.
 *
 * @param shop the shop whose batches they are
 * @param asOf the moment of the figures
 */
public record BatchReader(Shop shop, OffsetDateTime asOf) {
  /** Days after its last row from which a batch without a due date is late. */
  private static final int DAYS_WITHOUT_DUE = 14;

  /** Every batch that a weighing names, by id. */
  public SortedMap<String, BatchBalance> read(Weighings weighings) {
    var balances = new TreeMap<String, BatchBalance>(ByteOrder.IDS);
    for (String id : weighings.batches()) {
      balances.put(id, balance(shop.batch(id), weighings.ofBatch(id)));
    }
    return balances;
  }

  private BatchBalance balance(Batch batch, List<Weighing> rows) {
    var meatInByBody = new TreeMap<String, Weight>(ByteOrder.IDS);
    rows.stream()
        .filter(w -> w.step() == Step.TUB)
        .forEach(w -> meatInByBody.merge(owner(w), w.net(), Weight::plus));
    var meatIn = Weight.sum(meatInByBody.values());
    var out = total(rows, Step.PACK);
    var added = total(rows, Step.ADDED);
    if (batch.gain() && out.compareTo(meatIn.plus(added)) > 0) {
      added = out.minus(meatIn);
    }
    boolean finished = isFinished(rows);
    var loss = Optional.of(meatIn.plus(added).minus(out)).filter(l -> finished);
    var share = Share.of(loss, Optional.of(meatIn.plus(added)));
    var uncertainty = new Uncertainty(shop.settings().unit()).resolutionSquared(rows);
    var limit = limit(meatIn.plus(added));
    boolean fits =
        !meatIn.isZero() && loss.filter(l -> isWithin(l, limit, uncertainty)).isPresent();
    return new BatchBalance(
        batch,
        meatIn,
        added,
        out,
        loss,
        share,
        limit,
        uncertainty,
        fits
            ? BatchBalance.State.BALANCED
            : finished ? BatchBalance.State.OUT : BatchBalance.State.OPEN,
        !finished && isLate(batch, rows),
        meatInByBody,
        finished ? parts(meatInByBody, added, out) : new TreeMap<>(ByteOrder.IDS),
        rows);
  }

  private static String owner(Weighing tub) {
    return tub.body().isEmpty() ? Customer.SHOP : tub.body();
  }

  private static Weight total(List<Weighing> rows, Step step) {
    return Weighing.total(rows.stream().filter(w -> w.step() == step).toList());
  }

  /** Whether the batch has a pack and the quiet hours have passed since its last row. */
  private boolean isFinished(List<Weighing> rows) {
    var last = rows.get(rows.size() - 1).time();
    return rows.stream().anyMatch(w -> w.step() == Step.PACK)
        && Duration.between(last, asOf).compareTo(Duration.ofHours(shop.settings().quietHours()))
            >= 0;
  }

  /** The largest accepted loss of a batch into which {@code in} went. */
  private BigFraction limit(Weight in) {
    var percent = Exact.fraction(shop.settings().limits().batchLossPercent());
    return percent.multiply(in.fraction()).divide(Exact.HUNDRED);
  }

  /** Whether a loss is neither a gain beyond its uncertainty nor above the limit. */
  private static boolean isWithin(Weight weight, BigFraction limit, BigFraction uncertainty) {
    var loss = weight.fraction();
    boolean gain = loss.signum() < 0 && loss.multiply(loss).compareTo(uncertainty) > 0;
    return !gain && loss.compareTo(limit) <= 0;
  }

  private boolean isLate(Batch batch, List<Weighing> rows) {
    var last = rows.get(rows.size() - 1).time();
    return batch
        .due()
        .map(due -> asOf.toLocalDate().isAfter(due))
        .orElseGet(() -> asOf.isAfter(last.plusDays(DAYS_WITHOUT_DUE)));
  }

  /** The meat in the output, O·M/(M+A) and at most M, divided by what each body put in. */
  private static SortedMap<String, Weight> parts(
      SortedMap<String, Weight> meatInByBody, Weight added, Weight out) {
    var parts = new TreeMap<String, Weight>(ByteOrder.IDS);
    var meatIn = Weight.sum(meatInByBody.values());
    if (meatIn.isZero()) {
      return parts;
    }
    var meat = out.fraction().multiply(meatIn.fraction()).divide(meatIn.plus(added).fraction());
    var most = meatIn.fraction();
    var shares = new HashMap<String, BigFraction>();
    meatInByBody.forEach((body, weight) -> shares.put(body, weight.fraction()));
    long total = Exact.units(meat.compareTo(most) > 0 ? most : meat, Weight.OUTPUT_DECIMALS);
    Division.divide(total, shares)
        .forEach((body, part) -> parts.put(body, Weight.ofThousandths(part)));
    return parts;
  }
}
