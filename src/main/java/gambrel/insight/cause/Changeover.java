package gambrel.insight.cause;

import gambrel.trade.decision.ReasonCode;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds tickets beside a change of bodies at a scale that belong to the other body. There is a
 * pause where bodies change, so a change that begins or ends at a pause costs less.
 */
final class Changeover extends Finder {
  private static final int MOST_ROWS = 80;
  private static final int KEPT = 3;
  private static final long AT_A_PAUSE = 200;
  private static final long ELSEWHERE = 700;

  Changeover(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    return Stream.concat(
        rows.days(suspect.id()).flatMap(this::betweenRuns),
        rows.night().bodies().keySet().stream()
            .filter(this::lacksWeight)
            .flatMap(body -> rows.daysWithout(body).flatMap(day -> withoutRun(day, body))));
  }

  private boolean lacksWeight(String body) {
    var facts = rows.facts(body);
    return Faults.codes(facts).contains(ReasonCode.LOSS_HIGH)
        && Faults.isUnbalanced(facts, rows.night());
  }

  /** The end of one run keyed to the body of the next, and the beginning of one to the last. */
  private Stream<Candidate> betweenRuns(List<Weighing> day) {
    var runs = TicketRun.of(day);
    return IntStream.range(1, runs.size())
        .boxed()
        .flatMap(
            i -> {
              var before = runs.get(i - 1);
              var after = runs.get(i);
              return isSuspect(before.body()) || isSuspect(after.body())
                  ? Stream.concat(
                      ends(before, true, Optional.of(after.first()), after.body()),
                      ends(after, false, Optional.of(before.last()), before.body()))
                  : Stream.empty();
            });
  }

  /** All that a body has at a scale may be keyed to the body before or after it. */
  private Stream<Candidate> withoutRun(List<Weighing> day, String body) {
    return TicketRun.of(day).stream()
        .filter(run -> isSuspect(body) || isSuspect(run.body()))
        .flatMap(
            run ->
                Stream.concat(
                    ends(run, true, Optional.empty(), body),
                    ends(run, false, Optional.empty(), body)));
  }

  private boolean isSuspect(String body) {
    return suspect.id().equals(body);
  }

  /**
   * The first weighings of a run, or its last, keyed to another body; the best of them.
   *
   * @param last whether they are the last
   * @param beside the weighing next to that end of the run, if it is known
   */
  private Stream<Candidate> ends(
      TicketRun run, boolean last, Optional<Weighing> beside, String to) {
    var weighings = run.weighings();
    var all = new ArrayList<>(weighings);
    beside.ifPresent(weighing -> all.add(last ? weighings.size() : 0, weighing));
    long longest = IntStream.range(1, all.size()).mapToLong(i -> pause(all, i)).max().orElse(0);
    var candidates = new ArrayList<Candidate>();
    for (int n = 1; n < weighings.size() && n <= MOST_ROWS; n++) {
      int border = last ? weighings.size() - n : n;
      if (!rows.isUncorrected(weighings.get(last ? border : n - 1))) {
        break;
      }
      var moved = last ? weighings.subList(border, weighings.size()) : weighings.subList(0, border);
      long penalty = pause(weighings, border) == longest ? AT_A_PAUSE : ELSEWHERE;
      candidates.add(Candidate.of(Cause.CHANGEOVER, RowChange.move(moved, to), penalty));
    }
    return candidates.stream()
        .sorted(Comparator.comparingLong(candidate -> candidate.cost(rows)))
        .limit(KEPT);
  }

  /** The seconds between a weighing of a list and the one before it. */
  private static long pause(List<Weighing> weighings, int at) {
    return Duration.between(weighings.get(at - 1).time(), weighings.get(at).time()).toSeconds();
  }
}
