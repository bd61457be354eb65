package gambrel.cause;

import gambrel.weighing.Weighing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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
          candidates.addAll(best(tails(before, Optional.of(after), after.body())));
          candidates.addAll(best(heads(Optional.of(before), after, before.body())));
        }
      }
    }
    candidates.addAll(neverKeyed(suspect));
    return candidates;
  }

  /** All that one body has at a scale may be keyed to the body before or after it. */
  private List<Candidate> neverKeyed(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var absence : traces.absences()) {
      for (var run : Runs.of(traces.shift(absence.shift()))) {
        String body = absence.body();
        if (body.equals(suspect.id()) || run.body().equals(suspect.id())) {
          candidates.addAll(best(tails(run, Optional.empty(), body)));
          candidates.addAll(best(heads(Optional.empty(), run, body)));
        }
      }
    }
    return candidates;
  }

  /** The last weighings of the body before may be the first of the body after. */
  private List<Candidate> tails(Runs before, Optional<Runs> after, String to) {
    var rows = before.weighings();
    var all = new ArrayList<>(rows);
    after.ifPresent(run -> all.add(run.weighings().get(0)));
    long longest = longestPause(all);
    var candidates = new ArrayList<Candidate>();
    for (int first = rows.size() - 1; first >= 1 && rows.size() - first <= MOST_ROWS; first--) {
      if (!traces.isUntouched(rows.get(first))) {
        break;
      }
      boolean pause = pause(rows.get(first - 1), rows.get(first)) == longest;
      candidates.add(move(rows.subList(first, rows.size()), to, pause));
    }
    return candidates;
  }

  /** The first weighings of the body after may be the last of the body before. */
  private List<Candidate> heads(Optional<Runs> before, Runs after, String to) {
    var rows = after.weighings();
    var all = new ArrayList<>(rows);
    before.ifPresent(run -> all.add(0, run.weighings().get(run.size() - 1)));
    long longest = longestPause(all);
    var candidates = new ArrayList<Candidate>();
    for (int end = 1; end < rows.size() && end <= MOST_ROWS; end++) {
      if (!traces.isUntouched(rows.get(end - 1))) {
        break;
      }
      boolean pause = pause(rows.get(end - 1), rows.get(end)) == longest;
      candidates.add(move(rows.subList(0, end), to, pause));
    }
    return candidates;
  }

  private static Candidate move(List<Weighing> rows, String to, boolean pause) {
    return Candidate.of(Cause.CHANGEOVER, Runs.move(rows, to), pause ? AT_A_PAUSE : ELSEWHERE);
  }

  private static long longestPause(List<Weighing> rows) {
    long longest = 0;
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
