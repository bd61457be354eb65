package gambrel.insight.cause;

import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Correction;
import gambrel.trade.weighing.Weighing;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tries out the most likely changes for a body and keeps those that make it balance. */
final class Examiner {
  /** So many changes are reckoned for a body; sums choose them. */
  private static final int MOST_TRIALS = 8;

  /** A change may leave another body within three spreads, or as odd as it is. */
  private static final long UNHARMED = 9 * UsualRange.ONE;

  /** An open body has no balance yet that could contradict a change. */
  private static final long OPEN_PENALTY = 300;

  private final RowIndex traces;
  private final List<Finder> finders;
  private final Trial trial;
  private final CorrectionLines lines;

  Examiner(RowIndex traces) {
    this.traces = traces;
    this.trial = new Trial(traces);
    this.lines = new CorrectionLines(traces);
    var tares = new Tares(traces);
    var ranges = new CodeRanges(traces.night());
    this.finders =
        List.of(
            new DoublePress(traces),
            new WrongBody(traces),
            new Changeover(traces),
            new StrayPart(traces),
            new TareLeftOn(traces, tares, ranges),
            new Hook(traces, tares),
            new DecimalSlip(traces, ranges),
            new WrongUnit(traces, ranges));
  }

  /** Changes of rows that make a body balance and put no other out. */
  List<ScoredSuggestion> fits(BodyFacts suspect) {
    var relevance = new Relevance(traces, suspect);
    return finders.stream()
        .flatMap(finder -> finder.candidates(suspect).stream())
        .filter(relevance::mayClose)
        .sorted(
            Comparator.comparing(Candidate::estimated)
                .thenComparingLong(candidate -> Estimate.cost(traces, candidate)))
        .limit(MOST_TRIALS)
        .flatMap(candidate -> tried(suspect, candidate).stream())
        .toList();
  }

  private Optional<ScoredSuggestion> tried(BodyFacts suspect, Candidate candidate) {
    Set<String> bodies = new LinkedHashSet<>(candidate.bodies());
    bodies.add(suspect.id());
    var corrections = lines.of(candidate);
    var then = trial.with(bodies, corrections);
    long cost = candidate.penalty();
    for (String body : bodies) {
      var before = traces.facts(body);
      var after = traces.facts(then, body);
      boolean good = body.equals(suspect.id()) ? closes(before, after) : isUnharmed(before, after);
      if (!good) {
        return Optional.empty();
      }
      boolean open = before.account().decision().state() == State.OPEN;
      cost += after.strain() - before.strain() + (open ? OPEN_PENALTY : 0);
    }
    var suggestion = suggestion(suspect, candidate, corrections, then);
    return Optional.of(new ScoredSuggestion(suggestion, cost, kind(candidate)));
  }

  private static boolean closes(BodyFacts before, BodyFacts after) {
    boolean held = before.account().decision().state() == State.HELD;
    return after.account().decision().state() != State.OPEN
        && Faults.of(after.account()).isEmpty()
        && !Faults.isColdAboveHot(after)
        && after.lossStrain() <= Relevance.CLOSED
        && after.chillStrain() <= Math.max(UNHARMED, held ? before.chillStrain() : 0);
  }

  private static boolean isUnharmed(BodyFacts before, BodyFacts after) {
    return Faults.of(before.account()).containsAll(Faults.of(after.account()))
        && after.lossStrain() <= Math.max(UNHARMED, before.lossStrain())
        && after.chillStrain() <= Math.max(UNHARMED, before.chillStrain());
  }

  /** Of changes that differ only in how far a run goes, one is enough. */
  private static String kind(Candidate candidate) {
    var first = candidate.touches().get(0);
    return switch (candidate.cause()) {
      case WRONG_BODY, CHANGEOVER -> candidate.cause() + first.weighing().body() + first.bodyThen();
      case HOOK, UNIT -> candidate.cause().id();
      default -> candidate.cause() + first.weighing().place().toString();
    };
  }

  private Suggestion suggestion(
      BodyFacts suspect, Candidate candidate, List<Correction> corrections, Night then) {
    Weighing first = candidate.touches().get(0).weighing();
    return new Suggestion(
        suspect.id(),
        candidate.cause(),
        candidate.touches().stream().map(touch -> touch.weighing().place()).toList(),
        first.scale().id(),
        first.ticket(),
        traces.row(first.place()).raw(),
        new EvidenceText(traces, suspect, candidate, then).phrase(),
        suspect.balance().shares().cuttingLoss(),
        traces.facts(then, suspect.id()).balance().shares().cuttingLoss(),
        corrections);
  }
}
