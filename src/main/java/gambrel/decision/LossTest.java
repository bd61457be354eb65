package gambrel.decision;

import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.shop.Outcome;
import gambrel.shop.Settings;
import gambrel.shop.Step;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Holds the cutting loss of a body against what scales and shop allow. */
final class LossTest {
  /** So many days from the rail to the block need no second weighing. */
  private static final int DAYS_WITHOUT_WEIGHING = 2;

  private final Settings settings;

  LossTest(Settings settings) {
    this.settings = settings;
  }

  /** What is wrong with the loss, if it is tested at all. */
  Optional<ReasonCode> fault(BodyBalance balance) {
    boolean tested =
        settings.bins() == Settings.Bins.WEIGHED && balance.body().outcome() == Outcome.CUT;
    var loss = balance.outputs().filter(o -> tested).flatMap(Outputs::cuttingLoss);
    if (loss.isEmpty()) {
      return Optional.empty();
    }
    var uncertainty = uncertaintySquared(balance.outputs().get());
    if (isBeyond(loss.get().fraction().negate(), uncertainty)) {
      return Optional.of(ReasonCode.LOSS_NEGATIVE);
    }
    var excess = loss.get().fraction().subtract(limit(balance));
    return isBeyond(excess, uncertainty) ? Optional.of(ReasonCode.LOSS_HIGH) : Optional.empty();
  }

  private static BigFraction uncertaintySquared(Outputs outputs) {
    return outputs
        .resolutionSquared()
        .orElse(BigFraction.ZERO)
        .add(outputs.permittedSquared().orElse(BigFraction.ZERO));
  }

  private static boolean isBeyond(BigFraction excess, BigFraction uncertaintySquared) {
    return excess.signum() > 0 && excess.multiply(excess).compareTo(uncertaintySquared) > 0;
  }

  /** The most that may be lost, in the shop's unit. */
  private BigFraction limit(BodyBalance balance) {
    var limits = settings.limits();
    var percent = Exact.fraction(limits.cuttingLossPercent());
    long days = daysWithoutWeighing(balance);
    if (days > DAYS_WITHOUT_WEIGHING) {
      var perDay = Exact.fraction(limits.hangingPercentPerDay());
      percent = percent.add(perDay.multiply(BigFraction.of(days)));
    }
    return percent
        .multiply(balance.boning().orElse(Weight.ZERO).fraction())
        .divide(Exact.HUNDRED);
  }

  /** Days that a body hung between its last rail weight and the first cut; 0 where it was aged. */
  private static long daysWithoutWeighing(BodyBalance balance) {
    var rail = balance.rail();
    if (!balance.weighings().of(Step.AGED).isEmpty() || balance.firstCut().isEmpty()) {
      return 0;
    }
    return rail.hot()
        .lastDate()
        .map(hot -> rail.cold().lastDate().filter(cold -> cold.isAfter(hot)).orElse(hot))
        .or(() -> rail.cold().lastDate())
        .map(last -> ChronoUnit.DAYS.between(last, balance.firstCut().get()))
        .orElse(0L);
  }
}
