package gambrel.insight.cause;

import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** Weighings of one body, one after the other at one scale; at least one. */
record TicketRun(String body, List<Weighing> weighings) {
  /** The runs of a scale's day in order; a weighing of no body does not end a run. */
  static List<TicketRun> of(List<Weighing> day) {
    var runs = new ArrayList<TicketRun>();
    for (var weighing : day) {
      if (weighing.ofBody()) {
        if (runs.isEmpty() || !runs.get(runs.size() - 1).body().equals(weighing.body())) {
          runs.add(new TicketRun(weighing.body(), new ArrayList<>()));
        }
        runs.get(runs.size() - 1).weighings().add(weighing);
      }
    }
    return runs;
  }

  Weighing first() {
    return weighings.get(0);
  }

  Weighing last() {
    return weighings.get(weighings.size() - 1);
  }
}
