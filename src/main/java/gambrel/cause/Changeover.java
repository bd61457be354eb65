package gambrel.cause;

import gambrel.weighing.Weighing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds tickets beside a change of bodies at a scale that belong to the other side of it. Where
 * bodies change there is a pause, so a change that begins or ends at one is believed more.
 */
final class Changeover implements Finder {
  private static final int MOST_ROWS = 80;
  private static final int KEPT = 3;
  private static final long AT_A_PAUSE = 200;
  private static final long ELSEWHERE = 700;

  private final Traces traces;

  Changeover(Traces traces) {
    this.traces = traces;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var shift : traces.shiftsOf(suspect.id())) {
      var runs = Runs.of(shift);
      for (int i = 0; i + 1 < runs.size(); i++) {
        var before = runs.get(i);
        var after = runs.get(i + 1);
        if (before.body().equals(suspect.id()) || after.body().equals(suspect.id())) {
          candidates.addAll(best(tails(before, after)));
          candidates.addAll(best(heads(before, after)));
        }
      }
    }
    return candidates;
  }

  /** The last weighings of the body before may be the first of the body after. */
  private List<Candidate> tails(Runs before, Runs after) {
    var all = new ArrayList<Candidate>();
    var rows = before.weighings();
    long longest = longestPause(rows, after.weighings().get(0));
    for (int first = rows.size() - 1; first >= 1 && rows.size() - first <= MOST_ROWS; first--) {
      if (!traces.isUntouched(rows.get(first))) {
        break;
      }
      boolean pause = pause(rows.get(first - 1), rows.get(first)) == longest;
      all.add(move(rows.subList(first, rows.size()), after.body(), pause));
    }
    return all;
  }

  /** The first weighings of the body after may be the last of the body before. */
  private List<Candidate> heads(Runs before, Runs after) {
    var all = new ArrayList<Candidate>();
    var rows = after.weighings();
    var with = new ArrayList<Weighing>();
    with.add(before.weighings().get(before.size() - 1));
    with.addAll(rows.subList(0, rows.size() - 1));
    long longest = longestPause(with, rows.get(rows.size() - 1));
    for (int end = 1; end < rows.size() && end <= MOST_ROWS; end++) {
      if (!traces.isUntouched(rows.get(end - 1))) {
        break;
      }
      boolean pause = pause(rows.get(end - 1), rows.get(end)) == longest;
      all.add(move(rows.subList(0, end), before.body(), pause));
    }
    return all;
  }

  private static Candidate move(List<Weighing> rows, String to, boolean pause) {
    return Candidate.of(Cause.CHANGEOVER, Runs.move(rows, to), pause ? AT_A_PAUSE : ELSEWHERE);
  }

  private static long longestPause(List<Weighing> rows, Weighing next) {
    long longest = pause(rows.get(rows.size() - 1), next);
    for (int i = 1; i < rows.size(); i++) {
      longest = Math.max(longest, pause(rows.get(i - 1), rows.get(i)));
    }
    return longest;
  }

  private static long pause(Weighing one, Weighing next) {
    return Duration.between(one.time(), next.time()).toSeconds();
  }

  private List<Candidate> best(List<Candidate> candidates) {
    return candidates.stream()
        .sorted(Comparator.comparingLong(c -> Estimate.cost(traces, c)))
        .limit(KEPT)
        .toList();
  }
}
