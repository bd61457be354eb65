package gambrel.wording;

import gambrel.shop.Step;
import gambrel.statement.Fact;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** What is still to come, and when. */
final class PendingPart {

  private PendingPart() {}

  static List<Fact> of(Subject subject) {
    var facts = new ArrayList<Fact>();
    var open = subject.openBatches();
    for (int i = 0; i < open.size(); i++) {
      boolean last = i + 1 == open.size();
      String text = text(subject, open.get(i));
      facts.add(
          new Fact(
              open.get(i).name(),
              last ? text + " " + subject.wording().say("pending.revision") : text));
    }
    return facts;
  }

  private static String text(Subject subject, BatchMeat batch) {
    var wording = subject.wording();
    String put = subject.total(tubs(subject, batch.batch().batch().id()));
    String owner = subject.isSharer() ? "pending.batch.share" : "pending.batch";
    String sentence = wording.say(owner, put);
    return batch
        .batch()
        .batch()
        .due()
        .filter(day -> !batch.batch().late())
        .map(day -> sentence + " " + wording.say("pending.due", subject.formats().date(day)))
        .orElseGet(() -> sentence + " " + wording.say("pending.late"));
  }

  private static List<Weighing> tubs(Subject subject, String batch) {
    return subject.balance().weighings().of(Step.TUB).stream()
        .filter(tub -> tub.batch().equals(batch))
        .toList();
  }
}
