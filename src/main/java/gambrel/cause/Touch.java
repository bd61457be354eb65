package gambrel.cause;

import gambrel.measure.WeightUnit;
import gambrel.weighing.Weighing;

/**
 * One row and what would be done to it.
 *
 * @param weighing the row as it is, or as it would be if it stood alone
 * @param remedy what would be done
 */
record Touch(Weighing weighing, Remedy remedy) {
  /** The body that it would be keyed to. */
  String bodyThen() {
    return remedy instanceof Remedy.Move move ? move.body() : weighing.body();
  }

  /** The net weight that it would have, in hundred-thousandths of the shop's unit. */
  long netThen(WeightUnit shop) {
    if (remedy instanceof Remedy.Remove) {
      return 0;
    }
    if (remedy instanceof Remedy.Net net) {
      return weighing.unit().weight(net.net(), shop).hundredThousandths();
    }
    if (remedy instanceof Remedy.In in) {
      return in.unit().weight(weighing.shown(), shop).hundredThousandths();
    }
    return weighing.net().hundredThousandths();
  }
}
