package gambrel.trade.decision;

import gambrel.trade.account.Bill;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.RailWeights;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.SetAside;
import gambrel.trade.weighing.Weighing;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds the reasons that hold a finished body.
 *
 * @param settings the settings of the shop
 * @param asOf the moment of the run
 * @param setAside rows set aside and not dated later, by each body that they or their batch name
 * @param tests the tests of the scales
 * @param unread rows of the shop folder that cannot be read
 * @param usual the usual shares of the species
 */
public record Judge(
    Settings settings,
    OffsetDateTime asOf,
    Map<String, List<SetAside>> setAside,
    ScaleTests tests,
    UnreadRows unread,
    UsualShares usual) {
  /** Whether its last cut is so recent that the rest may still be cut. */
  boolean isCutLately(BodyBalance balance) {
    var since = asOf.minusHours(24L * settings.cuttingDays());
    return balance.lastCut().filter(time -> time.isAfter(since)).isPresent();
  }

  /** That so much of it is missing that it looks cut in part; empty if it does not. */
  Optional<Reason> incomplete(BodyBalance balance) {
    return usual
        .fault(balance)
        .or(
            () ->
                LossLimit.fault(settings, balance)
                    .filter(reason -> reason.code() == ReasonCode.LOSS_HIGH));
  }

  /**
   * That a body gave less than is usual; empty if it did not.
   *
   * @param lately empty too unless its last cut {@linkplain #isCutLately is} so recent, or is not
   */
  public Optional<Reason> homeLow(BodyBalance balance, boolean lately) {
    return isCutLately(balance) == lately ? usual.fault(balance) : Optional.empty();
  }

  /** All reasons that hold the body, in order; releases are not considered. */
  public Set<Reason> reasons(BodyBalance balance, Bill bill) {
    var reasons = new TreeSet<Reason>();
    findRailFaults(balance, reasons);
    LossLimit.fault(settings, balance).ifPresent(reasons::add);
    homeLow(balance, false).ifPresent(reasons::add);
    reasons.addAll(unread.reasons(balance, false));
    for (var row : setAside.getOrDefault(balance.body().id(), List.of())) {
      boolean own = row.bodies().contains(balance.body().id());
      reasons.add(
          new Reason(
                  ReasonCode.ROW_SET_ASIDE,
                  row.name(),
                  Phrase.of(own ? "REASON.ROW_SET_ASIDE" : "REASON.ROW_SET_ASIDE.BATCH"))
              .with("row", row.name())
              .with("batch", row.batch())
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
    Stream.concat(
            balance.weighings().all().stream(),
            balance.batches().stream().flatMap(batch -> batch.weighings().stream()))
        .flatMap(tests::doubts)
        .forEach(test -> reasons.add(tests.reason(test)));
    return reasons;
  }

  private void findRailFaults(BodyBalance balance, Set<Reason> reasons) {
    balance.rail().beyond().forEach(weighing -> reasons.add(railTwice(balance, weighing)));
    if (balance.fromBlock() || balance.body().outcome() == Outcome.CONDEMNED) {
      return;
    }
    for (var step : new TreeSet<>(settings.railOf(balance.body().species()))) {
      if (balance.weighings().of(step).isEmpty()) {
        reasons.add(new Reason(ReasonCode.RAIL_MISSING, step.id()).with("step", step.id()));
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

  /** The weighed parts, each with its number. */
  private static Value parts(BodyBalance balance, RailWeights cover) {
    var parts = new ArrayList<Phrase>();
    for (var piece : cover.pieces()) {
      var name = part(balance, piece.item());
      parts.add(Phrase.of("PART.NUMBER").with("number", piece.number()).with("part", name));
    }
    return new Value.Phrases(parts, ", ");
  }

  private static Value part(BodyBalance balance, String item) {
    return balance
        .weighings()
        .tree()
        .find(item)
        .<Value>map(part -> new Value.Part(balance.body().species(), part))
        .orElseGet(() -> new Value.Text(item));
  }

  /** The reason for a rail weighing beyond what the body has. */
  public static Reason railTwice(BodyBalance balance, Weighing weighing) {
    return new Reason(ReasonCode.RAIL_TWICE, weighing.name())
        .with("row", weighing.name())
        .with("ticket", weighing.ticket())
        .with("step", weighing.step().id())
        .with("part", part(balance, weighing.item()));
  }

  private void findBatchFaults(BatchBalance batch, Set<Reason> reasons) {
    if (batch.isOut()) {
      reasons.add(batchOut(batch, settings.unit()));
    }
    if (batch.late()) {
      reasons.add(
          new Reason(ReasonCode.BATCH_LATE, batch.batch().id()).with("batch", batch.batch().id()));
    }
  }

  /** The reason for shares that do not add up, with their sum. */
  public static Reason shares(Body body) {
    return new Reason(ReasonCode.SHARES, "").with("sum", new Value.Ratio(body.sharesSum()));
  }

  /** The reason for a batch that does not balance, with its weights, its limit and U. */
  public static Reason batchOut(BatchBalance batch, WeightUnit unit) {
    var uncertainty = Exact.sqrt(batch.uncertaintySquared(), Weight.DECIMALS);
    var in = batch.meatIn().plus(batch.added());
    var reason =
        new Reason(ReasonCode.BATCH_OUT, batch.batch().id())
            .with("batch", batch.batch().id())
            .with("meat", batch.meatIn(), unit)
            .with("added", batch.added(), unit)
            .with("in", in, unit)
            .with("out", batch.out(), unit)
            .with("loss", batch.loss().orElseThrow(), unit)
            .with("limit", Weight.of(batch.limit()), unit)
            .with("uncertainty", Weight.of(uncertainty), unit);
    return batch
        .lossShare()
        .map(share -> reason.with("share", new Value.Percent(share.percent())))
        .orElse(reason);
  }
}
