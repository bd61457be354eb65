package gambrel.insight.cause;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds a few tickets keyed to one body among tickets of another, or beside them. */
final class WrongBody implements Finder {
  private static final int MOST_ROWS = 3;
  private static final long BETWEEN = 100;
  static final long BESIDE = 300;
  private static final long A_ROW = 50;

  private final RowIndex traces;

  WrongBody(RowIndex traces) {
    this.traces = traces;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var shift : traces.shiftsOf(suspect.id())) {
      var runs = TicketRuns.of(shift);
      for (int i = 0; i < runs.size(); i++) {
        var run = runs.get(i);
        if (run.size() <= MOST_ROWS && run.weighings().stream().allMatch(traces::isUntouched)) {
          candidates.addAll(moves(run, neighbours(runs, i), suspect.id()));
        }
      }
    }
    return candidates;
  }

  private static Set<String> neighbours(List<TicketRuns> runs, int at) {
    var bodies = new LinkedHashSet<String>();
    if (at > 0) {
      bodies.add(runs.get(at - 1).body());
    }
    if (at + 1 < runs.size()) {
      bodies.add(runs.get(at + 1).body());
    }
    return bodies;
  }

  private static List<Candidate> moves(TicketRuns run, Set<String> neighbours, String suspect) {
    long penalty = (neighbours.size() == 1 ? BETWEEN : BESIDE) + A_ROW * run.size();
    return neighbours.stream()
        .filter(to -> to.equals(suspect) || run.body().equals(suspect))
        .map(to -> Candidate.of(Cause.WRONG_BODY, TicketRuns.move(run.weighings(), to), penalty))
        .toList();
  }
}
