package gambrel.insight.cause;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.weighing.Weighing;

/**
 * One row and what would be done to it.
 *
 * @param weighing the row as it is, or as it would be if it stood alone
 * @param remedy what would be done
 */
record RowChange(Weighing weighing, ProposedFix remedy) {
  /** The body that it would be keyed to. */
  String bodyThen() {
    return remedy instanceof ProposedFix.Move move ? move.body() : weighing.body();
  }

  /** The net weight that it would have, in hundred-thousandths of the shop's unit. */
  long netThen(WeightUnit shop) {
    if (remedy instanceof ProposedFix.Remove) {
      return 0;
    }
    if (remedy instanceof ProposedFix.Net net) {
      return weighing.unit().weight(net.net(), shop).hundredThousandths();
    }
    if (remedy instanceof ProposedFix.In in) {
      return in.unit().weight(weighing.shown(), shop).hundredThousandths();
    }
    return weighing.net().hundredThousandths();
  }
}
