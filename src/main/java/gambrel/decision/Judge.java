package gambrel.decision;

import gambrel.balance.BatchBalance;
import gambrel.balance.BatchState;
import gambrel.balance.BodyBalance;
import gambrel.charge.Bill;
import gambrel.shop.Settings;
import gambrel.shop.Step;
import gambrel.weighing.SetAside;
import gambrel.weighing.Weighing;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Finds everything for which a finished body has to wait. */
public final class Judge {
  private final Settings settings;
  private final Map<String, List<SetAside>> setAside;
  private final ScaleTests tests;
  private final LossTest losses;

  /**
   * For one night.
   *
   * @param setAside rows set aside and in force, by the bodies that they name
   */
  public Judge(Settings settings, Map<String, List<SetAside>> setAside, ScaleTests tests) {
    this.settings = settings;
    this.setAside = setAside;
    this.tests = tests;
    this.losses = new LossTest(settings);
  }

  /** The reasons that hold, released or not, in order. */
  public Set<Reason> reasons(BodyBalance balance, Bill bill) {
    var reasons = new TreeSet<Reason>();
    findRailFaults(balance, reasons);
    losses.fault(balance).ifPresent(code -> reasons.add(new Reason(code, "")));
    for (var row : setAside.getOrDefault(balance.body().id(), List.of())) {
      reasons.add(new Reason(ReasonCode.ROW_SET_ASIDE, row.name()));
    }
    balance.batches().forEach(batch -> findBatchFaults(batch, reasons));
    if (!balance.body().sharesAddUp()) {
      reasons.add(new Reason(ReasonCode.SHARES, ""));
    }
    bill.unknown()
        .forEach(charge -> reasons.add(new Reason(ReasonCode.CHARGE_UNKNOWN, charge.id())));
    for (var weighing : balance.weighings().all()) {
      tests.doubt(weighing).ifPresent(test -> reasons.add(scaleFailed(test)));
    }
    return reasons;
  }

  private void findRailFaults(BodyBalance balance, Set<Reason> reasons) {
    if (balance.fromBlock()) {
      return;
    }
    for (var step : new TreeSet<>(settings.railOf(balance.body().species()))) {
      if (balance.weighings().of(step).isEmpty()) {
        reasons.add(new Reason(ReasonCode.RAIL_MISSING, step.id()));
      }
    }
    boolean both =
        !balance.weighings().of(Step.HOT).isEmpty() && !balance.weighings().of(Step.COLD).isEmpty();
    if (both && !balance.rail().sameParts()) {
      reasons.add(new Reason(ReasonCode.PARTS_MISSING, ""));
    }
  }

  private static void findBatchFaults(BatchBalance batch, Set<Reason> reasons) {
    if (batch.state() == BatchState.OUT) {
      reasons.add(new Reason(ReasonCode.BATCH_OUT, batch.batch().id()));
    }
    if (batch.late()) {
      reasons.add(new Reason(ReasonCode.BATCH_LATE, batch.batch().id()));
    }
  }

  private static Reason scaleFailed(Weighing test) {
    String ticket = test.ticket().isEmpty() ? test.place().toString() : test.ticket();
    return new Reason(ReasonCode.SCALE_FAILED, test.scale().id() + " " + ticket);
  }

  /** Whether more is missing than the shop accepts. */
  boolean isLossHigh(BodyBalance balance) {
    return losses.fault(balance).filter(ReasonCode.LOSS_HIGH::equals).isPresent();
  }
}
