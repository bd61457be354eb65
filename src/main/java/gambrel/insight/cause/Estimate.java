package gambrel.insight.cause;

import java.util.HashMap;
import java.util.Map;

/** What a change would do to the figures of its bodies, by sums alone. */
final class Estimate {
  private Estimate() {}

  /** How odd the bodies would be, less how odd they are, with the change's penalty: low is good. */
  static long cost(RowIndex traces, Candidate candidate) {
    Map<String, BodyFacts.Shift> shifts = shifts(traces, candidate);
    long cost = candidate.penalty();
    for (String body : shifts.keySet()) {
      var facts = traces.facts(body);
      cost += facts.strain(shifts.get(body)) - facts.strain();
    }
    return cost;
  }

  /** How odd the loss of one of its bodies would be. */
  static long lossStrain(RowIndex traces, Candidate candidate, String body) {
    return traces
        .facts(body)
        .lossStrain(shifts(traces, candidate).getOrDefault(body, BodyFacts.Shift.NONE));
  }

  private static Map<String, BodyFacts.Shift> shifts(RowIndex traces, Candidate candidate) {
    var unit = traces.night().shop().settings().unit();
    var shifts = new HashMap<String, BodyFacts.Shift>();
    for (var touch : candidate.touches()) {
      var weighing = touch.weighing();
      if (weighing.body().isEmpty()) {
        continue;
      }
      long net = weighing.net().hundredThousandths();
      long then = touch.netThen(unit);
      var facts = traces.facts(weighing.body());
      if (touch.bodyThen().equals(weighing.body())) {
        shifts.merge(weighing.body(), facts.shift(weighing, then - net), BodyFacts.Shift::plus);
      } else {
        shifts.merge(weighing.body(), facts.shift(weighing, -net), BodyFacts.Shift::plus);
        shifts.merge(touch.bodyThen(), facts.shift(weighing, then), BodyFacts.Shift::plus);
      }
    }
    return shifts;
  }
}
