package gambrel.decision;

import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.shop.Outcome;
import gambrel.shop.Settings;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Holds the cutting loss of a body against what scales and shop allow. */
final class LossTest {
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
    var uncertainty = balance.outputs().get().uncertaintySquared();
    if (isBeyond(loss.get().fraction().negate(), uncertainty)) {
      return Optional.of(ReasonCode.LOSS_NEGATIVE);
    }
    var excess = loss.get().fraction().subtract(LossLimit.of(settings, balance));
    return isBeyond(excess, uncertainty) ? Optional.of(ReasonCode.LOSS_HIGH) : Optional.empty();
  }

  private static boolean isBeyond(BigFraction excess, BigFraction uncertaintySquared) {
    return excess.signum() > 0 && excess.multiply(excess).compareTo(uncertaintySquared) > 0;
  }
}
