package gambrel.month;

import gambrel.balance.BatchBalance;
import gambrel.balance.BatchState;
import gambrel.measure.Weight;
import java.util.List;
import java.util.Optional;

/** Batches of the month that do not balance. */
final class BatchFindings {
  private BatchFindings() {}

  static List<Finding> of(MonthRecords records) {
    return records.bodies().batches().stream()
        .filter(batch -> batch.state() == BatchState.OUT && batch.lossShare().isPresent())
        .map(BatchFindings::finding)
        .toList();
  }

  private static Finding finding(BatchBalance batch) {
    var loss = batch.loss().orElseThrow();
    return new Finding(
        FindingKind.BATCH,
        loss.isNegative() ? "gain" : "loss",
        List.of(batch.batch().id()),
        List.of(
            new Evidence.Name(batch.batch().id()),
            new Evidence.Mass(loss.isNegative() ? Weight.ZERO.minus(loss) : loss),
            Evidence.percent(batch.lossShare().orElseThrow().percent().abs())),
        Optional.empty(),
        Sureness.CERTAIN);
  }
}
