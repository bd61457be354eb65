package gambrel.balance;

import gambrel.measure.ByteOrder;
import gambrel.measure.Division;
import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.shop.Batch;
import gambrel.shop.Customer;
import gambrel.shop.Settings;
import gambrel.shop.Shop;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import gambrel.weighing.Weighings;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Balances batches and divides what came out among the bodies that went in. */
public final class BatchReader {
  /** A batch without a due date is late so many days after its last row. */
  private static final int DAYS_WITHOUT_DUE = 14;

  private final Settings settings;
  private final OffsetDateTime asOf;

  private BatchReader(Settings settings, OffsetDateTime asOf) {
    this.settings = settings;
    this.asOf = asOf;
  }

  /** Every batch that {@code weighings} name, by id. */
  public static SortedMap<String, BatchBalance> read(
      Shop shop, Weighings weighings, OffsetDateTime asOf) {
    var reader = new BatchReader(shop.settings(), asOf);
    var balances = new TreeMap<String, BatchBalance>(ByteOrder.IDS);
    for (String id : weighings.batches()) {
      balances.put(id, reader.balance(shop.batch(id), weighings.ofBatch(id)));
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
    var state = state(rows, meatIn, added, out);
    var parts =
        state == BatchState.OPEN ? new TreeMap<String, Weight>(ByteOrder.IDS) : parts(meatInByBody, added, out);
    return new BatchBalance(
        batch,
        meatIn,
        added,
        out,
        limit(meatIn.plus(added)),
        new Uncertainty(settings.unit()).resolutionSquared(rows),
        state,
        state == BatchState.OPEN && isLate(batch, rows),
        meatInByBody,
        parts,
        rows);
  }

  private static String owner(Weighing tub) {
    return tub.body().isEmpty() ? Customer.SHOP : tub.body();
  }

  private static Weight total(List<Weighing> rows, Step step) {
    return Weighing.total(rows.stream().filter(w -> w.step() == step).toList());
  }

  private BatchState state(List<Weighing> rows, Weight meatIn, Weight added, Weight out) {
    boolean packed = rows.stream().anyMatch(w -> w.step() == Step.PACK);
    if (!packed || !isQuiet(rows)) {
      return BatchState.OPEN;
    }
    var loss = meatIn.plus(added).minus(out).fraction();
    var uncertainty = new Uncertainty(settings.unit()).resolutionSquared(rows);
    boolean surplus = loss.signum() < 0 && loss.multiply(loss).compareTo(uncertainty) > 0;
    if (surplus || meatIn.isZero()) {
      return BatchState.OUT;
    }
    return loss.compareTo(limit(meatIn.plus(added))) > 0 ? BatchState.OUT : BatchState.BALANCED;
  }

  /** The most that a batch may lose of what went in. */
  private BigFraction limit(Weight in) {
    var percent = Exact.fraction(settings.limits().batchLossPercent());
    return percent.multiply(in.fraction()).divide(Exact.HUNDRED);
  }

  private boolean isQuiet(List<Weighing> rows) {
    var last = rows.get(rows.size() - 1).time();
    return Duration.between(last, asOf).compareTo(Duration.ofHours(settings.quietHours())) >= 0;
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
    var meat =
        out.fraction()
            .multiply(meatIn.fraction())
            .divide(meatIn.plus(added).fraction());
    var most = meatIn.fraction();
    var shares = new HashMap<String, BigFraction>();
    meatInByBody.forEach((body, weight) -> shares.put(body, weight.fraction()));
    long total = Exact.units(meat.compareTo(most) > 0 ? most : meat, Weight.OUTPUT_DECIMALS);
    Division.divide(total, shares)
        .forEach((body, part) -> parts.put(body, Weight.ofThousandths(part)));
    return parts;
  }
}
