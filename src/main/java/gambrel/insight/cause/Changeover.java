package gambrel.insight.cause;

import gambrel.trade.weighing.Weighing;
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

  private final RowIndex traces;

  Changeover(RowIndex traces) {
    this.traces = traces;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    String body = suspect.id();
    var candidates = new ArrayList<Candidate>();
    for (var shift : traces.shiftsOf(body)) {
      var runs = TicketRuns.of(shift);
      for (int i = 0; i + 1 < runs.size(); i++) {
        var before = runs.get(i);
        var after = runs.get(i + 1);
        if (before.body().equals(body) || after.body().equals(body)) {
          candidates.addAll(ends(before, true, Optional.of(after.first()), after.body()));
          candidates.addAll(ends(after, false, Optional.of(before.last()), before.body()));
        }
      }
    }
    // All that one body has at a scale may be keyed to the body before or after it.
    for (var absence : traces.absences()) {
      for (var run : TicketRuns.of(traces.shift(absence.shift()))) {
        if (absence.body().equals(body) || run.body().equals(body)) {
          candidates.addAll(ends(run, true, Optional.empty(), absence.body()));
          candidates.addAll(ends(run, false, Optional.empty(), absence.body()));
        }
      }
    }
    return candidates;
  }

  /**
   * The first weighings of a run, or its last, keyed to another body; the best of them.
   *
   * @param last whether they are the last
   * @param beside the weighing next to that end of the run, if it is known
   */
  private List<Candidate> ends(TicketRuns run, boolean last, Optional<Weighing> beside, String to) {
    var rows = run.weighings();
    var all = new ArrayList<>(rows);
    beside.ifPresent(weighing -> all.add(last ? rows.size() : 0, weighing));
    long longest = longestPause(all);
    var candidates = new ArrayList<Candidate>();
    for (int n = 1; n < rows.size() && n <= MOST_ROWS; n++) {
      int border = last ? rows.size() - n : n;
      if (!traces.isUntouched(rows.get(last ? border : n - 1))) {
        break;
      }
      var moved = last ? rows.subList(border, rows.size()) : rows.subList(0, border);
      boolean pause = pause(rows.get(border - 1), rows.get(border)) == longest;
      candidates.add(
          Candidate.of(
              Cause.CHANGEOVER, TicketRuns.move(moved, to), pause ? AT_A_PAUSE : ELSEWHERE));
    }
    return candidates.stream()
        .sorted(Comparator.comparingLong(c -> Estimate.cost(traces, c)))
        .limit(KEPT)
        .toList();
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
}
