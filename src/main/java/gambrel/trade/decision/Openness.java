package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a body is still being worked on. */
final class Openness {
  private final Settings settings;
  private final OffsetDateTime asOf;
  private final Judge judge;

  Openness(Settings settings, OffsetDateTime asOf, Judge judge) {
    this.settings = settings;
    this.asOf = asOf;
    this.judge = judge;
  }

  /** Why the body is open: empty if it is not, no reasons if it is only being weighed. */
  Optional<List<Reason>> of(BodyBalance balance) {
    var waiting = new ArrayList<Reason>();
    balance.batches().stream()
        .filter(b -> b.isOpen() && !b.late() && b.batch().due().isEmpty())
        .forEach(b -> waiting.add(batchOpen(b.batch().id())));
    if (isPartCut(balance)) {
      waiting.add(new Reason(ReasonCode.PART_CUT, ""));
    }
    return waiting.isEmpty() && isFinished(balance) ? Optional.empty() : Optional.of(waiting);
  }

  private static Reason batchOpen(String batch) {
    return new Reason(ReasonCode.BATCH_OPEN, batch).with("batch", batch);
  }

  private boolean isFinished(BodyBalance balance) {
    if (balance.body().outcome() != Outcome.CUT) {
      return isQuietSince(balance.weighings().rail());
    }
    boolean cut = balance.cuts().stream().anyMatch(w -> w.step() != Step.BLOCK);
    return cut && isQuietSince(balance.weighings().all());
  }

  private boolean isQuietSince(List<Weighing> weighings) {
    return !weighings.isEmpty()
        && hoursSince(weighings.get(weighings.size() - 1).time(), settings.quietHours());
  }

  private boolean isPartCut(BodyBalance balance) {
    return judge.isLossHigh(balance)
        && balance
            .lastCut()
            .filter(cut -> !hoursSince(cut, 24 * settings.cuttingDays()))
            .isPresent();
  }

  private boolean hoursSince(OffsetDateTime time, int hours) {
    return Duration.between(time, asOf).compareTo(Duration.ofHours(hours)) >= 0;
  }
}
