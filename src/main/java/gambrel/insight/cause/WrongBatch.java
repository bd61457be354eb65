package gambrel.insight.cause;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds a tub keyed to the wrong one of two batches of about the same days. */
record WrongBatch(RowIndex rows, BodyFacts suspect) {
  private static final long PRIOR = 500;

  Stream<Candidate> candidates() {
    return suspect
        .unbalancedBatches()
        .flatMap(
            out ->
                others(out)
                    .flatMap(other -> Stream.concat(tubs(out, other), tubs(other, out))));
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
        .map(tub -> RowChange.toBatch(tub, to.batch().id()))
        .map(change -> Candidate.of(Cause.WRONG_BATCH, List.of(change), PRIOR));
  }
}
