package gambrel.insight.cause;

import gambrel.trade.decision.ReasonCode;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.stream.Stream;

/** Finds a rail weighing that one body lacks among those of a body that has one too many. */
final class StrayPart extends Finder {
  private static final long PENALTY = 100;

  StrayPart(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    return rows.night().ledger().setAside().stream()
        .filter(aside -> aside.effective() && aside.bodies().size() == 1)
        .filter(aside -> aside.notice().code() == NoticeCode.PART_TWICE)
        .flatMap(
            aside ->
                rows.alone(rows.row(aside.notice().place())).stream()
                    .flatMap(weighing -> moves(weighing, aside.bodies().get(0))));
  }

  /** The row set aside, or another of the same part, keyed to a body that lacks one. */
  private Stream<Candidate> moves(Weighing aside, String twice) {
    var same =
        rows.facts(twice).balance().weighings().of(aside.step()).stream()
            .filter(weighing -> weighing.item().equals(aside.item()))
            .filter(rows::isUncorrected)
            .toList();
    return lacking(aside.step(), twice)
        .flatMap(body -> Stream.concat(Stream.of(aside), same.stream()).map(w -> move(w, body)));
  }

  /** The suspect; if the suspect is the body with one too many, each body that lacks one. */
  private Stream<String> lacking(Step step, String twice) {
    var bodies =
        twice.equals(suspect.id())
            ? rows.night().bodies().keySet().stream()
            : Stream.of(suspect.id());
    return bodies.filter(body -> !body.equals(twice) && isLacking(body, step));
  }

  private boolean isLacking(String body, Step step) {
    return rows.night().bodies().get(body).decision().reasons().stream()
        .anyMatch(
            r ->
                r.code() == ReasonCode.PARTS_MISSING
                    || r.code() == ReasonCode.RAIL_MISSING && r.name().equals(step.id()));
  }

  private static Candidate move(Weighing weighing, String to) {
    return Candidate.of(Cause.WRONG_BODY, RowChange.move(weighing, to), PENALTY).notEstimated();
  }
}
