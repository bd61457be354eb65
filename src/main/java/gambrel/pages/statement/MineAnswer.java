package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.words.Wording;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Is this all mine, and only mine? */
final class MineAnswer {
  private final StatementContext subject;
  private final Wording wording;
  private final List<String> lines = new ArrayList<>();

  private MineAnswer(StatementContext subject) {
    this.subject = subject;
    this.wording = subject.wording();
  }

  /** Empty where nothing is packed yet. */
  static Optional<Answer> of(StatementContext subject) {
    return subject.own().lines().isEmpty() && subject.own().batchParts().isEmpty()
        ? Optional.empty()
        : Optional.of(new MineAnswer(subject).answer());
  }

  private Answer answer() {
    var batches = subject.batchMeat();
    boolean alone = batches.stream().allMatch(BatchMeat::isAlone);
    if (alone) {
      lines.add(subject.sayForHead("mine.alone"));
    }
    for (var batch : batches) {
      if (!batch.isAlone()) {
        mixed(batch);
      }
    }
    batches.forEach(this::added);
    others();
    return new Answer("mine", wording.say("mine.question"), lead(alone), lines, List.of());
  }

  private String lead(boolean alone) {
    if (subject.isOutrightOnly()) {
      return wording.say("mine.lead.outright");
    }
    if (!alone) {
      return wording.say("mine.lead.mixed");
    }
    if (subject.isSharer()) {
      return wording.say("mine.lead.share", subject.share());
    }
    return subject.isMob()
        ? wording.say("mine.lead.mob", subject.formats().count(subject.body().head()))
        : wording.say("mine.lead");
  }

  private void mixed(BatchMeat batch) {
    String part = subject.home(batch.part());
    if (batch.others() > 0) {
      String others = subject.formats().count(batch.others());
      lines.add(wording.count("mine.batch.mixed", batch.others(), batch.name(), others, part));
    }
    if (batch.hasShopMeat()) {
      lines.add(wording.say("mine.batch.shop", batch.name(), part));
    }
  }

  private void added(BatchMeat batch) {
    if (!batch.added().isEmpty()) {
      lines.add(wording.say("mine.added", batch.name(), batch.added()));
    } else if (!batch.batch().added().isZero()) {
      lines.add(wording.say("mine.added.unknown", batch.name()));
    }
  }

  private void others() {
    if (subject.isSharer()) {
      lines.add(wording.say("mine.divided"));
    } else if (!subject.isOutrightOnly()) {
      var whole = subject.outputs().map(Outputs::takeHome).orElse(Weight.ZERO);
      var elsewhere = Weight.ofThousandths(whole.thousandths()).minus(subject.own().takeHome());
      if (elsewhere.hundredThousandths() > 0) {
        lines.add(wording.say("mine.elsewhere", subject.home(elsewhere)));
      }
    }
  }
}
