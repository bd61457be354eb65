package gambrel.insight.cause;

import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** Weighings of one body, one after the other at one scale. */
record TicketRuns(String body, List<Weighing> weighings) {
  /** The runs of a scale's day in order; what belongs to no body is passed over. */
  static List<TicketRuns> of(List<Weighing> shift) {
    var runs = new ArrayList<TicketRuns>();
    for (var weighing : shift) {
      if (!weighing.ofBody()) {
        continue;
      }
      if (runs.isEmpty() || !runs.get(runs.size() - 1).body().equals(weighing.body())) {
        runs.add(new TicketRuns(weighing.body(), new ArrayList<>()));
      }
      runs.get(runs.size() - 1).weighings().add(weighing);
    }
    return runs;
  }

  int size() {
    return weighings.size();
  }

  Weighing first() {
    return weighings.get(0);
  }

  Weighing last() {
    return weighings.get(size() - 1);
  }

  /** Each of {@code weighings} keyed to a body. */
  static List<RowChange> move(List<Weighing> weighings, String to) {
    return weighings.stream().map(w -> new RowChange(w, new ProposedFix.Move(to))).toList();
  }
}
