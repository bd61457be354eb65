package gambrel.insight.cause;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds a tub keyed to the wrong one of two batches of about the same days. */
record WrongBatch(RowIndex rows, BodyFacts suspect) {
  private static final long PRIOR = 500;

  /** The tubs of one body, and tubs weighed one after the other, mostly go into one batch. */
  private static final long BESIDE = 200;

  Stream<Candidate> candidates() {
    return suspect
        .unbalancedBatches()
        .flatMap(
            out -> others(out).flatMap(other -> Stream.concat(tubs(out, other), tubs(other, out))));
  }

  /** The other batches that were worked on on a day of this one. */
  private Stream<BatchBalance> others(BatchBalance batch) {
    var days = days(batch);
    return rows.night.batches().values().stream()
        .filter(other -> !other.batch().id().equals(batch.batch().id()))
        .filter(other -> days(other).stream().anyMatch(days::contains));
  }

  private static Set<LocalDate> days(BatchBalance batch) {
    return batch.weighings().stream().map(Weighing::date).collect(Collectors.toSet());
  }

  /** Each tub of one batch keyed to the other. */
  private Stream<Candidate> tubs(BatchBalance from, BatchBalance to) {
    return from.weighings().stream()
        .filter(weighing -> weighing.step() == Step.TUB && rows.isUncorrected(weighing))
        .map(
            tub ->
                Candidate.of(Cause.WRONG_BATCH, RowChange.toBatch(tub, to.batch().id()), PRIOR)
                    .witnessed(BESIDE * (fits(tub, to) - fits(tub, from))));
  }

  /** How many of the tub before it, the one after it and another of its body are in a batch. */
  private long fits(Weighing tub, BatchBalance batch) {
    var tubs = rows.day(tub).stream().filter(w -> w.step() == Step.TUB).toList();
    int at = tubs.indexOf(tub);
    var beside = IntStream.of(at - 1, at + 1).filter(i -> i >= 0 && i < tubs.size());
    return beside.filter(i -> tubs.get(i).batch().equals(batch.batch().id())).count()
        + batch.weighings().stream()
            .filter(w -> w.step() == Step.TUB && !w.equals(tub) && w.body().equals(tub.body()))
            .limit(1)
            .count();
  }
}
