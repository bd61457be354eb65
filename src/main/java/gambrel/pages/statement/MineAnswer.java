package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers "Is this all mine, and only mine?": other animals, additions and other owners. */
final class MineAnswer extends StatementPart {
  private final List<String> lines = new ArrayList<>();

  private MineAnswer(StatementContext subject) {
    super(subject);
  }

  /** The answer; empty before the first pack. */
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
    return new Answer("mine", say("mine.question"), lead(alone), lines, List.of());
  }

  private String lead(boolean alone) {
    if (subject.isOutrightOnly()) {
      return say("mine.lead.outright");
    }
    if (!alone) {
      return say("mine.lead.mixed");
    }
    if (subject.isSharer()) {
      return say("mine.lead.share", subject.share());
    }
    return subject.isMob()
        ? say("mine.lead.mob", formats.count(subject.body().head()))
        : say("mine.lead");
  }

  private void mixed(BatchMeat batch) {
    String part = subject.home(batch.part());
    if (batch.others() > 0) {
      String others = formats.count(batch.others());
      lines.add(wording.count("mine.batch.mixed", batch.others(), batch.name(), others, part));
    }
    if (batch.hasShopMeat()) {
      lines.add(say("mine.batch.shop", batch.name(), part));
    }
  }

  private void added(BatchMeat batch) {
    if (!batch.added().isEmpty()) {
      lines.add(say("mine.added", batch.name(), batch.added()));
    } else if (!batch.batch().added().isZero()) {
      lines.add(say("mine.added.unknown", batch.name()));
    }
  }

  private void others() {
    if (subject.isSharer()) {
      lines.add(say("mine.divided"));
    } else if (!subject.isOutrightOnly()) {
      var elsewhere = subject.takeHomeOfOthers();
      if (!elsewhere.isZero()) {
        lines.add(say("mine.elsewhere", subject.home(elsewhere)));
      }
    }
  }
}
