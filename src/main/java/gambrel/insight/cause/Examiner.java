package gambrel.insight.cause;

import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Correction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tries the most likely changes for a body and keeps those that make it balance. */
final class Examiner {
  /** So many changes are tried for a body; sums choose them. */
  private static final int MOST_TRIALS = 8;

  /** A change may leave another body within three spreads, or as odd as it is. */
  private static final long UNHARMED = UsualRange.strainOf(3);

  /** An open body has no balance yet that could contradict a change. */
  private static final long OPEN_PENALTY = 300;

  private final RowIndex rows;
  private final CorrectionLines lines;

  Examiner(RowIndex rows) {
    this.rows = rows;
    this.lines = new CorrectionLines(rows);
  }

  /** At most three suggestions for a body, best first. */
  List<Suggestion> suggestions(BodyFacts suspect) {
    var found = new ArrayList<>(changes(suspect));
    if (Faults.isUnbalanced(suspect, rows.night())) {
      found.addAll(new MissingBin(rows, suspect).suggestions());
      if (found.isEmpty()) {
        new MissingPart(rows, suspect).suggestion().ifPresent(found::add);
      }
    }
    return ScoredSuggestion.best(found);
  }

  /** Changes of rows that make a body balance and put no other body out of balance. */
  private List<ScoredSuggestion> changes(BodyFacts suspect) {
    return Finder.all(rows, suspect)
        .filter(candidate -> Faults.mayMend(candidate, suspect, rows))
        .sorted(
            Comparator.comparing(Candidate::estimated)
                .thenComparingLong(candidate -> candidate.cost(rows)))
        .limit(MOST_TRIALS)
        .flatMap(candidate -> tried(suspect, candidate).stream())
        .toList();
  }

  private Optional<ScoredSuggestion> tried(BodyFacts suspect, Candidate candidate) {
    Set<String> bodies = new LinkedHashSet<>(candidate.bodies());
    bodies.add(suspect.id());
    var corrections = lines.of(candidate);
    var then = Trial.with(rows, bodies, corrections);
    long cost = candidate.penalty();
    for (String body : bodies) {
      var before = rows.facts(body);
      var after = rows.facts(then, body);
      if (!(body.equals(suspect.id()) ? balances(before, after) : isUnharmed(before, after))) {
        return Optional.empty();
      }
      boolean open = before.account().decision().state() == State.OPEN;
      cost += after.strain() - before.strain() + (open ? OPEN_PENALTY : 0);
    }
    var suggestion = suggestion(suspect, candidate, corrections, then);
    return Optional.of(new ScoredSuggestion(suggestion, cost, kind(candidate)));
  }

  private static boolean balances(BodyFacts before, BodyFacts after) {
    boolean held = before.account().decision().state() == State.HELD;
    return after.account().decision().state() != State.OPEN
        && Faults.of(after).isEmpty()
        && !Faults.isColdAboveHot(after)
        && after.lossStrain() <= Faults.BALANCED
        && after.chillStrain() <= Math.max(UNHARMED, held ? before.chillStrain() : 0);
  }

  private static boolean isUnharmed(BodyFacts before, BodyFacts after) {
    return Faults.of(before).containsAll(Faults.of(after))
        && after.lossStrain() <= Math.max(UNHARMED, before.lossStrain())
        && after.chillStrain() <= Math.max(UNHARMED, before.chillStrain());
  }

  /** Of changes that differ only in the length of a run, the best one is enough. */
  private static String kind(Candidate candidate) {
    var first = candidate.first();
    return switch (candidate.cause()) {
      case WRONG_BODY, CHANGEOVER -> candidate.cause() + first.weighing().body() + first.body();
      case HOOK, UNIT -> candidate.cause().id();
      default -> candidate.cause() + first.weighing().place().toString();
    };
  }

  private Suggestion suggestion(
      BodyFacts suspect, Candidate candidate, List<Correction> corrections, Night then) {
    var first = candidate.first().weighing();
    return new Suggestion(
        suspect.id(),
        candidate.cause(),
        candidate.changes().stream().map(change -> change.weighing().place()).toList(),
        first.scale().id(),
        first.ticket(),
        rows.row(first.place()).raw(),
        new EvidenceText(rows, suspect, candidate, then).phrase(),
        suspect.balance().shares().cuttingLoss(),
        then.bodies().get(suspect.id()).balance().shares().cuttingLoss(),
        corrections);
  }
}
