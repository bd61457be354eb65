package gambrel.cause;

import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** Weighings of one body, one after the other at one scale. */
record Runs(String body, List<Weighing> weighings) {
  /** The runs of a scale's day in order; what belongs to no body is passed over. */
  static List<Runs> of(List<Weighing> shift) {
    var runs = new ArrayList<Runs>();
    for (var weighing : shift) {
      if (!weighing.ofBody()) {
        continue;
      }
      if (runs.isEmpty() || !runs.get(runs.size() - 1).body().equals(weighing.body())) {
        runs.add(new Runs(weighing.body(), new ArrayList<>()));
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
  static List<Touch> move(List<Weighing> weighings, String to) {
    return weighings.stream().map(w -> new Touch(w, new Remedy.Move(to))).toList();
  }
}
