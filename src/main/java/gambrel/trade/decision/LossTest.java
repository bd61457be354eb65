package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Holds the cutting loss of a body against what scales and shop allow. */
final class LossTest {
  private final Settings settings;

  LossTest(Settings settings) {
    this.settings = settings;
  }

  /** The loss as a reason to hold, if it is tested and is too low or too high. */
  Optional<Reason> fault(BodyBalance balance) {
    boolean tested =
        settings.bins() == Settings.Bins.WEIGHED && balance.body().outcome() == Outcome.CUT;
    return balance
        .outputs()
        .filter(outputs -> tested)
        .flatMap(outputs -> outputs.cuttingLoss().flatMap(loss -> fault(balance, outputs, loss)));
  }

  private Optional<Reason> fault(BodyBalance balance, Outputs outputs, Weight loss) {
    var limit = LossLimit.of(settings, balance);
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
            .with("uncertainty", Weight.of(Exact.sqrt(uncertainty, Weight.DECIMALS)), unit)
            .with("boning", balance.boning().orElse(Weight.ZERO), unit));
  }

  private static boolean isBeyond(BigFraction excess, BigFraction uncertaintySquared) {
    return excess.signum() > 0 && excess.multiply(excess).compareTo(uncertaintySquared) > 0;
  }
}
