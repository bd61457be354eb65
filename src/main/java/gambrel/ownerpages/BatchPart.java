package gambrel.ownerpages;

import gambrel.measure.Share;
import gambrel.month.MonthBodies;
import gambrel.balance.BatchBalance;
import gambrel.measure.Weight;
import gambrel.statement.SummaryView.BatchRow;
import gambrel.wording.Decimals;
import gambrel.wording.Wording;
import java.util.List;
import java.util.Optional;

/** The batches whose last row is of the month. */
final class BatchPart {
  private final MonthBodies month;
  private final Wording wording;

  BatchPart(MonthBodies month, Wording wording) {
    this.month = month;
    this.wording = wording;
  }

  List<BatchRow> rows() {
    return month.batches().stream().map(this::row).toList();
  }

  private BatchRow row(BatchBalance batch) {
    int decimals = Decimals.of(batch.weighings(), month.night().shop().settings().unit());
    return new BatchRow(
        batch.batch().id(),
        batch.batch().product(),
        weight(batch.meatIn(), decimals),
        weight(batch.added(), decimals),
        weight(batch.out(), decimals),
        batch.loss().map(loss -> wording.formats().bareWeight(loss, decimals)).orElse(""),
        Percents.bare(batch.lossShare().map(Share::percent), wording),
        state(batch));
  }

  /** Nothing is printed as nothing. */
  private String weight(Weight weight, int decimals) {
    return Optional.of(weight)
        .filter(w -> !w.isZero())
        .map(w -> wording.formats().bareWeight(w, decimals))
        .orElse("");
  }

  private String state(BatchBalance batch) {
    if (batch.late()) {
      return wording.say("summary.batch.late");
    }
    var due = batch.batch().due().filter(day -> batch.isOpen());
    return due.map(day -> wording.say("summary.batch.due", wording.formats().brief(day)))
        .orElseGet(() -> wording.say("summary.batch." + batch.state().id()));
  }
}
