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
  private static final long BESIDE = 600;
  private static final long A_ROW = 50;
  private static final int MOST_BETWEEN = 3;
  private static final long SAME_DAY = 600;

  /** There is a pause where bodies change, so that a run that begins or ends at one is likelier. */
  private static final long AT_A_PAUSE = 300;

  private static final long ELSEWHERE = 600;
  private static final long AT_ANOTHER_SCALE = 800;
  private static final int MOST_AT_A_CHANGE = 80;
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
            rows.days(suspect.id).map(Run::of).flatMap(this::betweenOthers),
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
                          (isSuspect(cut.body()) ? bodies.stream() : Stream.of(suspect.id))
                              .filter(to -> !to.equals(cut.body()))
                              .map(to -> RowChange.move(cut, to)));
            })
        .map(change -> Candidate.of(Cause.WRONG_BODY, change, SAME_DAY).variant("SAME_DAY"));
  }

  private boolean isSuspect(String body) {
    return suspect.id.equals(body);
  }

  /** Each short run keyed to each of its neighbours, if it or the neighbour is suspect. */
  private Stream<Candidate> betweenOthers(List<Run> runs) {
    return IntStream.range(0, runs.size())
        .boxed()
        .flatMap(
            at ->
                toNeighbours(
                    runs.get(at),
                    IntStream.of(at - 1, at + 1)
                        .filter(i -> i >= 0 && i < runs.size())
                        .mapToObj(i -> runs.get(i).body())
                        .distinct()
                        .toList()));
  }

  private Stream<Candidate> toNeighbours(Run run, List<String> neighbours) {
    int size = run.weighings().size();
    if (size > MOST_BETWEEN || !run.weighings().stream().allMatch(rows::isUncorrected)) {
      return Stream.empty();
    }
    boolean between = neighbours.size() == 1;
    long prior = (between ? BETWEEN : BESIDE) + A_ROW * size;
    return neighbours.stream()
        .filter(to -> isSuspect(to) || isSuspect(run.body()))
        .map(to -> Candidate.of(Cause.WRONG_BODY, RowChange.move(run.weighings(), to), prior))
        .map(candidate -> candidate.variant(between ? "BETWEEN" : "BESIDE"));
  }

  /** The end of each run keyed to the body of the next, and its beginning to the last. */
  private Stream<Candidate> atChanges(List<Run> runs) {
    return IntStream.range(1, runs.size())
        .boxed()
        .flatMap(i -> atChange(runs.get(i - 1), runs.get(i)));
  }

  private Stream<Candidate> atChange(Run before, Run after) {
    int last = before.weighings().size() - 1;
    return isSuspect(before.body()) || isSuspect(after.body())
        ? Stream.concat(
            ends(before, true, Optional.of(after.weighings().get(0)), after.body()),
            ends(after, false, Optional.of(before.weighings().get(last)), before.body()))
        : Stream.empty();
  }

  private boolean lacksWeight(String body) {
    var facts = rows.facts(body);
    return facts.faultCodes().contains(ReasonCode.LOSS_HIGH) && facts.isUnbalanced();
  }

  /** All that a body has at a scale may be keyed to the body before or after it. */
  private Stream<Candidate> atOthers(String body) {
    return rows.daysWithout(body)
        .flatMap(day -> Run.of(day).stream())
        .filter(run -> isSuspect(body) || isSuspect(run.body()))
        .flatMap(
            run -> Stream.of(true, false).flatMap(last -> ends(run, last, Optional.empty(), body)));
  }

  /**
   * The first weighings of a run, or its last, keyed to another body.
   *
   * @param last whether they are the last
   * @param beside the weighing next to that end of the run, if it is known
   */
  private Stream<Candidate> ends(Run run, boolean last, Optional<Weighing> beside, String to) {
    var weighings = run.weighings();
    var all = new ArrayList<>(weighings);
    beside.ifPresent(weighing -> all.add(last ? weighings.size() : 0, weighing));
    long longest = IntStream.range(1, all.size()).mapToLong(i -> pause(all, i)).max().orElse(0);
    var candidates = new ArrayList<Candidate>();
    for (int n = 1; n < weighings.size() && n <= MOST_AT_A_CHANGE; n++) {
      int border = last ? weighings.size() - n : n;
      if (!rows.isUncorrected(weighings.get(last ? border : n - 1))) {
        break;
      }
      var moved = last ? weighings.subList(border, weighings.size()) : weighings.subList(0, border);
      boolean paused = pause(weighings, border) == longest;
      long prior = beside.isEmpty() ? AT_ANOTHER_SCALE : paused ? AT_A_PAUSE : ELSEWHERE;
      var changes = RowChange.move(moved, to);
      candidates.add(
          n == 1
              ? Candidate.of(Cause.WRONG_BODY, changes, prior).variant("BESIDE")
              : Candidate.of(Cause.CHANGEOVER, changes, prior));
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
    var bodies = isSuspect(twice) ? rows.night.bodies().keySet().stream() : Stream.of(suspect.id);
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
