package gambrel.insight.cause;

import gambrel.trade.decision.ReasonCode;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.SetAside;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** Finds a rail weighing that one body lacks among those of a body that has one too many. */
final class StrayPart implements Finder {
  private static final long PENALTY = 100;

  private final RowIndex traces;

  StrayPart(RowIndex traces) {
    this.traces = traces;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var aside : traces.night().ledger().setAside()) {
      if (aside.effective()
          && aside.notice().code() == NoticeCode.RAIL_TWICE
          && aside.bodies().size() == 1) {
        candidates.addAll(candidates(suspect, aside));
      }
    }
    return candidates;
  }

  private List<Candidate> candidates(BodyFacts suspect, SetAside aside) {
    String twice = aside.bodies().get(0);
    var beyond = traces.alone(traces.row(aside.notice().place()));
    var candidates = new ArrayList<Candidate>();
    if (beyond.isEmpty()) {
      return candidates;
    }
    for (String lacking : lacking(beyond.get().step(), twice, suspect.id())) {
      candidates.add(move(beyond.get(), lacking));
      traces.facts(twice).balance().weighings().of(beyond.get().step()).stream()
          .filter(w -> w.item().equals(beyond.get().item()))
          .filter(traces::isUntouched)
          .forEach(w -> candidates.add(move(w, lacking)));
    }
    return candidates;
  }

  /** The suspect itself, or if it is the one that has too many, those that lack such a weighing. */
  private List<String> lacking(Step step, String twice, String suspect) {
    if (!twice.equals(suspect)) {
      return isLacking(suspect, step) ? List.of(suspect) : List.of();
    }
    return traces.night().bodies().keySet().stream()
        .filter(body -> !body.equals(twice) && isLacking(body, step))
        .toList();
  }

  private boolean isLacking(String body, Step step) {
    return traces.night().bodies().get(body).decision().reasons().stream()
        .anyMatch(
            r ->
                r.code() == ReasonCode.PARTS_MISSING
                    || r.code() == ReasonCode.RAIL_MISSING && r.name().equals(step.id()));
  }

  private static Candidate move(Weighing weighing, String to) {
    return Candidate.of(
            Cause.WRONG_BODY, new RowChange(weighing, new ProposedFix.Move(to)), PENALTY)
        .untold();
  }
}
