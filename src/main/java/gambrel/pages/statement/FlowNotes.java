package gambrel.pages.statement;

import gambrel.trade.shop.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Notes below the flow chart. */
final class FlowNotes {

  private FlowNotes() {}

  /** All notes as one paragraph; an empty list if there are none. */
  static List<String> of(StatementContext subject) {
    var wording = subject.wording();
    var outputs = subject.outputs().orElseThrow();
    var sentences = new ArrayList<String>();
    if (!subject.is(Outcome.WHOLE)) {
      sentences.add(wording.say("flow.base"));
    }
    if (!outputs.offal().isZero()) {
      sentences.add(wording.say("flow.offal", subject.home(outputs.offal())));
    }
    if (subject.balance().fromBlock()) {
      sentences.add(wording.say("flow.block"));
    }
    if (!outputs.railTrim().isZero()) {
      sentences.add(wording.say("flow.trim", subject.total(subject.balance().trim().all())));
    }
    var shrink = subject.balance().shares().ageingShrink();
    if (shrink.filter(s -> !s.whole().equals(subject.balance().cold().orElseThrow())).isPresent()) {
      sentences.add(wording.say("flow.aged.parts"));
    }
    return sentences.isEmpty() ? List.of() : List.of(String.join(" ", sentences));
  }
}
