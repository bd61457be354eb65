package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import java.time.temporal.ChronoUnit;
import org.apache.commons.numbers.fraction.BigFraction;

/** How much of a body the shop allows to be lost in cutting. */
public final class LossLimit {
  /** So many days from the rail to the block need no second weighing. */
  private static final int DAYS_WITHOUT_WEIGHING = 2;

  private LossLimit() {}

  /** The most that may be lost, in the shop's unit. */
  public static BigFraction of(Settings settings, BodyBalance balance) {
    var limits = settings.limits();
    var percent = Exact.fraction(limits.cuttingLossPercent());
    long days = daysWithoutWeighing(balance);
    if (days > DAYS_WITHOUT_WEIGHING) {
      var perDay = Exact.fraction(limits.hangingPercentPerDay());
      percent = percent.add(perDay.multiply(BigFraction.of(days)));
    }
    return percent.multiply(balance.boning().orElse(Weight.ZERO).fraction()).divide(Exact.HUNDRED);
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
