package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The cutting loss that a shop accepts, and the test that holds a body whose loss is negative or
 * above the limit by more than its expanded uncertainty U.
 */
public final class LossLimit {
  /** Days from the last rail weight to the first cut for which the limit is not raised. */
  private static final int DAYS_WITHOUT_WEIGHING = 2;

  private LossLimit() {}

  /** The largest accepted cutting loss, in the shop's unit. */
  public static BigFraction of(Settings settings, BodyBalance balance) {
    var percent = Exact.fraction(settings.limits().cuttingLossPercent());
    return ofBoning(percent, balance).add(hanging(settings, balance));
  }

  /**
   * The part of the limit that is for hanging, in the shop's unit: what a body may lose on the rail
   * after its last weight there. Zero if it is not {@link #hungUnweighed}.
   */
  public static BigFraction hanging(Settings settings, BodyBalance balance) {
    var days = BigFraction.of(hungUnweighed(balance) ? daysWithoutWeighing(balance) : 0);
    return ofBoning(
        Exact.fraction(settings.limits().hangingPercentPerDay()).multiply(days), balance);
  }

  /**
   * Whether it hung for more than two days after its last rail weight, and was not weighed again.
   */
  public static boolean hungUnweighed(BodyBalance balance) {
    return daysWithoutWeighing(balance) > DAYS_WITHOUT_WEIGHING;
  }

  private static BigFraction ofBoning(BigFraction percent, BodyBalance balance) {
    return percent.multiply(balance.boning().orElse(Weight.ZERO).fraction()).divide(Exact.HUNDRED);
  }

  /** Days from the last hot or cold weight to the first cut; 0 if an aged weight follows them. */
  public static long daysWithoutWeighing(BodyBalance balance) {
    var firstCut = balance.times().firstCut();
    if (firstCut.isEmpty() || !balance.weighings().of(Step.AGED).isEmpty()) {
      return 0;
    }
    return Stream.of(balance.rail().hot().lastDate(), balance.rail().cold().lastDate())
        .flatMap(Optional::stream)
        .max(Comparator.naturalOrder())
        .map(last -> ChronoUnit.DAYS.between(last, firstCut.get()))
        .orElse(0L);
  }

  /** The cutting loss as a reason to hold; empty if it is not tested or within its limits. */
  static Optional<Reason> fault(Settings settings, BodyBalance balance) {
    return balance
        .outputs()
        .filter(outputs -> settings.bins() == Settings.Bins.WEIGHED)
        .flatMap(
            outputs ->
                outputs.cuttingLoss().flatMap(loss -> fault(settings, balance, outputs, loss)));
  }

  private static Optional<Reason> fault(
      Settings settings, BodyBalance balance, Outputs outputs, Weight loss) {
    var limit = of(settings, balance);
    var uncertainty = outputs.uncertaintySquared();
    ReasonCode code;
    if (isBeyond(loss.fraction().negate(), uncertainty)) {
      code = ReasonCode.LOSS_NEGATIVE;
    } else if (isBeyond(loss.fraction().subtract(limit), uncertainty)) {
      code = ReasonCode.LOSS_HIGH;
    } else {
      return Optional.empty();
    }
    var unit = settings.unit();
    return Optional.of(
        new Reason(code, "")
            .with("loss", loss, unit)
            .with("surplus", Weight.ZERO.minus(loss), unit)
            .with("limit", Weight.of(limit), unit)
            .with(Reason.REST, Weight.of(loss.fraction().subtract(limit)), unit)
            .with("uncertainty", Weight.of(Exact.sqrt(uncertainty, Weight.DECIMALS)), unit)
            .with("boning", balance.boning().orElse(Weight.ZERO), unit));
  }

  private static boolean isBeyond(BigFraction excess, BigFraction uncertaintySquared) {
    return excess.signum() > 0 && excess.multiply(excess).compareTo(uncertaintySquared) > 0;
  }
}
