package gambrel.wording;

import gambrel.shop.Outcome;
import gambrel.statement.Answer;
import gambrel.statement.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The questions that customers ask, in the order in which they ask them. */
final class AnswersPart {

  private AnswersPart() {}

  static List<Answer> of(Subject subject) {
    var answers = new ArrayList<Answer>();
    answers.add(PacksAnswer.of(subject));
    answers.add(OweAnswer.of(subject));
    if (!subject.isOutrightOnly()) {
      if (!subject.is(Outcome.CONDEMNED)) {
        WhyAnswer.of(subject).ifPresent(answers::add);
        NormalAnswer.of(subject).ifPresent(answers::add);
      }
    }
    if (!subject.is(Outcome.CONDEMNED)) {
      MineAnswer.of(subject).ifPresent(answers::add);
    }
    if (!subject.isOutrightOnly()) {
      rest(subject).ifPresent(answers::add);
    }
    return answers;
  }

  private static Optional<Answer> rest(Subject subject) {
    var wording = subject.wording();
    List<Fact> facts = RestFacts.of(subject);
    String lead =
        subject.is(Outcome.CONDEMNED)
            ? wording.say("rest.lead.condemned")
            : wording.say("rest.lead");
    return facts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Answer("rest", wording.say("rest.question"), lead, List.of(), facts));
  }
}
