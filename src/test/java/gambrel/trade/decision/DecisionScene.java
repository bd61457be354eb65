package gambrel.trade.decision;

import gambrel.scenes.FiguresTest;
import java.util.List;

/** A test of the decision about body B1. */
abstract class DecisionScene extends FiguresTest {

  /** The decision at a moment. */
  Decision decision(String asOf) {
    return scene.reckon(asOf).bodies().get("B1").decision();
  }

  /** The decision on 20 March 2026. */
  Decision decision() {
    return decision("20T02:00");
  }

  /** The codes and names of the reasons on 20 March 2026, such as {@code BATCH_OUT M1}. */
  List<String> reasons() {
    return named(decision().reasons());
  }

  /** Codes and names of reasons. */
  static List<String> named(List<Reason> reasons) {
    return reasons.stream().map(r -> (r.code() + " " + r.name()).strip()).toList();
  }
}
