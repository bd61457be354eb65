package gambrel.insight.cause;

import gambrel.trade.weighing.Weighing;
import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Finds two weighings that are equal, seconds apart, with consecutive tickets. */
final class DoublePress implements Finder {
  private static final int MOST_SECONDS = 15;
  private static final long PENALTY = 50;

  private final RowIndex traces;

  DoublePress(RowIndex traces) {
    this.traces = traces;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var weighing : suspect.weighings()) {
      var shift = traces.shift(weighing);
      int at = shift.indexOf(weighing);
      if (at > 0 && isTwice(shift.get(at - 1), weighing) && traces.isUntouched(weighing)) {
        var earlier = shift.get(at - 1);
        candidates.add(
            Candidate.of(
                    Cause.DOUBLE_PRESS, new RowChange(weighing, new ProposedFix.Remove()), PENALTY)
                .with("witness", EvidenceValues.ticket(earlier, "MIDDLE"))
                .with("seconds", seconds(earlier, weighing)));
      }
    }
    return candidates;
  }

  private static boolean isTwice(Weighing one, Weighing next) {
    return one.body().equals(next.body())
        && one.batch().equals(next.batch())
        && one.code().equals(next.code())
        && one.net().equals(next.net())
        && one.pieces().equals(next.pieces())
        && one.customer().equals(next.customer())
        && seconds(one, next) <= MOST_SECONDS
        && isNext(one.ticket(), next.ticket());
  }

  private static long seconds(Weighing one, Weighing next) {
    return Duration.between(one.time(), next.time()).toSeconds();
  }

  private static boolean isNext(String ticket, String next) {
    boolean numbers = ticket.matches("\\d+") && next.matches("\\d+");
    return numbers
        ? new BigInteger(ticket).add(BigInteger.ONE).equals(new BigInteger(next))
        : ticket.isEmpty() && next.isEmpty();
  }
}
