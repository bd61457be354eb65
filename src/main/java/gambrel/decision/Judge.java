package gambrel.decision;

import gambrel.balance.BatchBalance;
import gambrel.balance.BatchState;
import gambrel.balance.BodyBalance;
import gambrel.balance.RailCover;
import gambrel.charge.Bill;
import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import gambrel.notice.Phrase;
import gambrel.notice.Value;
import gambrel.shop.Body;
import gambrel.shop.Settings;
import gambrel.shop.Step;
import gambrel.weighing.SetAside;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

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
    losses.fault(balance).ifPresent(reasons::add);
    for (var row : setAside.getOrDefault(balance.body().id(), List.of())) {
      reasons.add(
          new Reason(ReasonCode.ROW_SET_ASIDE, row.name())
              .with("row", row.name())
              .with("ticket", row.notice().ticket()));
    }
    balance.batches().forEach(batch -> findBatchFaults(batch, reasons));
    if (!balance.body().sharesAddUp()) {
      reasons.add(shares(balance.body()));
    }
    bill.unknown()
        .forEach(
            charge ->
                reasons.add(
                    new Reason(ReasonCode.CHARGE_UNKNOWN, charge.id())
                        .with("charge", charge.id())
                        .with("description", charge.description())));
    for (var weighing : balance.weighings().all()) {
      tests.doubt(weighing).ifPresent(test -> reasons.add(tests.reason(test)));
    }
    return reasons;
  }

  private void findRailFaults(BodyBalance balance, Set<Reason> reasons) {
    if (balance.fromBlock()) {
      return;
    }
    for (var step : new TreeSet<>(settings.railOf(balance.body().species()))) {
      if (balance.weighings().of(step).isEmpty()) {
        reasons.add(
            new Reason(ReasonCode.RAIL_MISSING, step.id()).with("step", step.id()));
      }
    }
    boolean both =
        !balance.weighings().of(Step.HOT).isEmpty() && !balance.weighings().of(Step.COLD).isEmpty();
    if (both && !balance.rail().sameParts()) {
      reasons.add(
          new Reason(ReasonCode.PARTS_MISSING, "")
              .with("hot", parts(balance, balance.rail().hot()))
              .with("cold", parts(balance, balance.rail().cold())));
    }
  }

  /** The parts that were weighed, each with its number. */
  private static Value parts(BodyBalance balance, RailCover cover) {
    var parts = new ArrayList<Phrase>();
    for (var piece : cover.pieces()) {
      var item = balance.weighings().tree().find(piece.item());
      Value name =
          item.isPresent()
              ? new Value.Part(balance.body().species(), item.get())
              : new Value.Text(piece.item());
      parts.add(Phrase.of("PART.NUMBER").with("number", piece.number()).with("part", name));
    }
    return new Value.Phrases(parts, ", ");
  }

  private void findBatchFaults(BatchBalance batch, Set<Reason> reasons) {
    if (batch.state() == BatchState.OUT) {
      reasons.add(batchOut(batch, settings.unit()));
    }
    if (batch.late()) {
      reasons.add(
          new Reason(ReasonCode.BATCH_LATE, batch.batch().id()).with("batch", batch.batch().id()));
    }
  }

  /** That the shares of a body do not add up, with their sum where all are known. */
  public static Reason shares(Body body) {
    return body.owners().containsValue(BigFraction.ZERO)
        ? new Reason(ReasonCode.SHARES, "", Phrase.of("REASON.SHARES.UNKNOWN"))
        : new Reason(ReasonCode.SHARES, "").with("sum", new Value.Ratio(body.sharesSum()));
  }

  /** That a batch does not balance, with its weights, its limit and U. */
  public static Reason batchOut(BatchBalance batch, WeightUnit unit) {
    var uncertainty = Exact.sqrt(batch.resolutionSquared(), Weight.DECIMALS);
    var in = batch.meatIn().plus(batch.added());
    var reason =
        new Reason(ReasonCode.BATCH_OUT, batch.batch().id())
            .with("batch", batch.batch().id())
            .with("meat", batch.meatIn(), unit)
            .with("added", batch.added(), unit)
            .with("in", in, unit)
            .with("out", batch.out(), unit)
            .with("loss", in.minus(batch.out()), unit)
            .with("limit", Weight.of(batch.limit()), unit)
            .with("uncertainty", Weight.of(uncertainty), unit);
    return batch
        .lossShare()
        .map(share -> reason.with("share", new Value.Percent(share.multiply(Exact.HUNDRED))))
        .orElse(reason);
  }

  /** Whether more is missing than the shop accepts. */
  boolean isLossHigh(BodyBalance balance) {
    return losses.fault(balance).filter(r -> r.code() == ReasonCode.LOSS_HIGH).isPresent();
  }
}
