package gambrel.insight.cause;

import gambrel.trade.decision.ReasonCode;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.SetAside;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds weighings keyed to the wrong body: a few tickets of one body between tickets of another
 * body, beside them, or anywhere on a day on which both were cut; tickets at a change of bodies,
 * where the body key was changed too late or too early; and a rail weighing that one body lacks
 * among those of a body that has one too many.
 */
record WrongBody(RowIndex rows, BodyFacts suspect) {
  private static final long BETWEEN = 400;
  private static final long A_ROW = 50;
  private static final long SAME_DAY = 900;

  /** There is a pause where bodies change, so that a run that begins or ends at one is likelier. */
  private static final long AT_A_PAUSE = 300;

  private static final long ELSEWHERE = 600;
  private static final long AT_ANOTHER_SCALE = 800;
  private static final long STRAY = 300;

  /** Weighings of one body, one after the other at one scale; at least one. */
  private record Run(String body, List<Weighing> weighings) {
    /** The runs of a scale's day in order; a weighing of no body does not end a run. */
    static List<Run> of(List<Weighing> day) {
      var runs = new ArrayList<Run>();
      for (var weighing : day) {
        if (weighing.ofBody()) {
          if (runs.isEmpty() || !runs.get(runs.size() - 1).body().equals(weighing.body())) {
            runs.add(new Run(weighing.body(), new ArrayList<>()));
          }
          runs.get(runs.size() - 1).weighings().add(weighing);
        }
      }
      return runs;
    }
  }

  Stream<Candidate> candidates() {
    return Stream.of(
            rows.days(suspect.id).map(Run::of).flatMap(this::atChanges),
            sameDay(),
            rows.night.bodies().keySet().stream().filter(this::lacksWeight).flatMap(this::atOthers),
            rows.setAside(NoticeCode.PART_TWICE).flatMap(this::strays))
        .flatMap(found -> found);
  }

  /** Each cut of the suspect keyed to each other body of its day, and each of theirs to it. */
  private Stream<Candidate> sameDay() {
    return suspect.balance.cuts().stream()
        .map(Weighing::date)
        .distinct()
        .map(rows::cutOn)
        .flatMap(
            cuts -> {
              var bodies = cuts.stream().map(Weighing::body).distinct().toList();
              return cuts.stream()
                  .filter(rows::isUncorrected)
                  .flatMap(
                      cut ->
                          bodies.stream()
                              .filter(to -> !to.equals(cut.body()) && isSuspect(cut.body(), to))
                              .map(to -> RowChange.move(cut, to)));
            })
        .map(change -> Candidate.of(Cause.WRONG_BODY, change, SAME_DAY).variant("SAME_DAY"));
  }

  private boolean isSuspect(String body, String other) {
    return suspect.id.equals(body) || suspect.id.equals(other);
  }

  /**
   * The end of each run keyed to the body of the next, its beginning to the last, and all of it.
   */
  private Stream<Candidate> atChanges(List<Run> runs) {
    return IntStream.range(1, runs.size())
        .filter(i -> isSuspect(runs.get(i - 1).body(), runs.get(i).body()))
        .boxed()
        .flatMap(
            i -> {
              var before = runs.get(i - 1);
              var after = runs.get(i);
              var last = before.weighings().get(before.weighings().size() - 1);
              var first = Optional.of(after.weighings().get(0));
              return Stream.concat(
                  ends(before, true, first, after.body(), isBetween(runs, i - 1)),
                  ends(after, false, Optional.of(last), before.body(), isBetween(runs, i)));
            });
  }

  /** Whether a run lies between two of one other body. */
  private static boolean isBetween(List<Run> runs, int at) {
    return at > 0
        && at < runs.size() - 1
        && runs.get(at - 1).body().equals(runs.get(at + 1).body());
  }

  private boolean lacksWeight(String body) {
    var facts = rows.facts(body);
    return facts.faultCodes().contains(ReasonCode.LOSS_HIGH) && facts.isUnbalanced();
  }

  /** All that a body has at a scale may be keyed to the body before or after it. */
  private Stream<Candidate> atOthers(String body) {
    return rows.daysWithout(body)
        .flatMap(day -> Run.of(day).stream())
        .filter(run -> isSuspect(body, run.body()))
        .flatMap(
            run ->
                Stream.of(true, false)
                    .flatMap(last -> ends(run, last, Optional.empty(), body, false)));
  }

  /**
   * The first weighings of a run, or its last, or all of them keyed to another body.
   *
   * @param last whether they are the last
   * @param beside the weighing next to that end of the run, if it is known
   * @param between whether the run lies between weighings of that body
   */
  private Stream<Candidate> ends(
      Run run, boolean last, Optional<Weighing> beside, String to, boolean between) {
    var weighings = run.weighings();
    int size = weighings.size();
    var all = new ArrayList<>(weighings);
    beside.ifPresent(weighing -> all.add(last ? size : 0, weighing));
    long longest = IntStream.range(1, all.size()).mapToLong(i -> pause(all, i)).max().orElse(0);
    var candidates = new ArrayList<Candidate>();
    for (int n = 1; n <= size; n++) {
      int border = last ? size - n : n;
      if (!rows.isUncorrected(weighings.get(last ? border : n - 1))) {
        break;
      }
      var moved = last ? weighings.subList(border, size) : weighings.subList(0, border);
      boolean whole = between && n == size;
      boolean paused = n < size && pause(weighings, border) == longest;
      long here = whole ? BETWEEN + A_ROW * n : paused ? AT_A_PAUSE : ELSEWHERE;
      long prior = beside.isEmpty() ? AT_ANOTHER_SCALE : here;
      var cause = whole || n == 1 ? Cause.WRONG_BODY : Cause.CHANGEOVER;
      var candidate = Candidate.of(cause, RowChange.move(moved, to), prior);
      candidates.add(
          cause == Cause.CHANGEOVER ? candidate : candidate.variant(whole ? "BETWEEN" : "BESIDE"));
    }
    return candidates.stream();
  }

  /** The seconds between a weighing of a list and the one before it. */
  private static long pause(List<Weighing> weighings, int at) {
    return Duration.between(weighings.get(at - 1).time(), weighings.get(at).time()).toSeconds();
  }

  /** The row set aside as one too many, or another of its part, keyed to a body that lacks one. */
  private Stream<Candidate> strays(SetAside aside) {
    String twice = aside.bodies().get(0);
    return rows.alone(rows.row(aside.notice().place())).stream()
        .flatMap(
            row ->
                lacking(row.step(), twice)
                    .flatMap(
                        body ->
                            Stream.concat(Stream.of(row), same(row, twice))
                                .map(weighing -> stray(weighing, body))));
  }

  private Stream<Weighing> same(Weighing row, String body) {
    return rows.facts(body).balance.weighings().of(row.step()).stream()
        .filter(weighing -> weighing.item().equals(row.item()))
        .filter(rows::isUncorrected);
  }

  /** The suspect; if the suspect is the body with one too many, each body that lacks one. */
  private Stream<String> lacking(Step step, String twice) {
    var bodies =
        suspect.id.equals(twice) ? rows.night.bodies().keySet().stream() : Stream.of(suspect.id);
    return bodies.filter(body -> !body.equals(twice) && isLacking(body, step));
  }

  private boolean isLacking(String body, Step step) {
    return rows.night.bodies().get(body).decision().reasons().stream()
        .anyMatch(
            r ->
                r.code() == ReasonCode.PARTS_MISSING
                    || r.code() == ReasonCode.RAIL_MISSING && r.name().equals(step.id()));
  }

  private static Candidate stray(Weighing weighing, String to) {
    return Candidate.of(Cause.WRONG_BODY, RowChange.move(weighing, to), STRAY)
        .variant("STRAY")
        .notEstimated();
  }
}
