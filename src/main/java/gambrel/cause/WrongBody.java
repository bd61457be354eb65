package gambrel.cause;

import java.util.ArrayList;
import java.util.List;

/** Finds a few tickets keyed to one body between tickets of another. */
final class WrongBody implements Finder {
  private static final int MOST_ROWS = 3;
  private static final long PENALTY = 100;
  private static final long PENALTY_A_ROW = 50;

  private final Traces traces;

  WrongBody(Traces traces) {
    this.traces = traces;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var shift : traces.shiftsOf(suspect.id())) {
      var runs = Runs.of(shift);
      for (int i = 1; i + 1 < runs.size(); i++) {
        var run = runs.get(i);
        String around = runs.get(i - 1).body();
        boolean between = around.equals(runs.get(i + 1).body()) && run.size() <= MOST_ROWS;
        boolean concerns = run.body().equals(suspect.id()) || around.equals(suspect.id());
        if (between && concerns && run.weighings().stream().allMatch(traces::isUntouched)) {
          candidates.add(
              Candidate.of(
                  Cause.WRONG_BODY,
                  Runs.move(run.weighings(), around),
                  PENALTY + PENALTY_A_ROW * run.size()));
        }
      }
    }
    return candidates;
  }
}
