package gambrel.insight.cause;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds a few tickets of one body between tickets of another body, or beside them. */
final class WrongBody extends Finder {
  /** From this penalty on the tickets stand beside the other body's, and below it between them. */
  static final long BESIDE = 300;

  private static final long BETWEEN = 100;
  private static final long A_ROW = 50;
  private static final int MOST_ROWS = 3;

  WrongBody(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    return rows.days(suspect.id())
        .map(TicketRun::of)
        .flatMap(
            runs -> IntStream.range(0, runs.size()).boxed().flatMap(at -> candidates(runs, at)));
  }

  /** The run at {@code at} keyed to each of its neighbours, if it or the neighbour is suspect. */
  private Stream<Candidate> candidates(List<TicketRun> runs, int at) {
    var run = runs.get(at);
    int size = run.weighings().size();
    if (size > MOST_ROWS || !run.weighings().stream().allMatch(rows::isUncorrected)) {
      return Stream.empty();
    }
    var neighbours =
        IntStream.of(at - 1, at + 1)
            .filter(i -> i >= 0 && i < runs.size())
            .mapToObj(i -> runs.get(i).body())
            .distinct()
            .toList();
    long penalty = (neighbours.size() == 1 ? BETWEEN : BESIDE) + A_ROW * size;
    return neighbours.stream()
        .filter(to -> to.equals(suspect.id()) || run.body().equals(suspect.id()))
        .map(to -> Candidate.of(Cause.WRONG_BODY, RowChange.move(run.weighings(), to), penalty));
  }
}
