package gambrel.wording;

import gambrel.balance.Outputs;
import gambrel.cuts.Species;
import gambrel.measure.Weight;
import gambrel.shop.Outcome;
import gambrel.statement.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why so much less than it weighed alive? */
final class WhyAnswer {

  private WhyAnswer() {}

  /** Empty where there is nothing to compare, or nothing packed yet. */
  static Optional<Answer> of(Subject subject) {
    var start = Start.of(subject);
    var home = subject.outputs().map(Outputs::takeHome);
    if (start.isEmpty() || home.isEmpty() || home.get().compareTo(start.get().weight()) >= 0) {
      return Optional.empty();
    }
    var wording = subject.wording();
    boolean alive = start.get().isAlive();
    return Optional.of(
        new Answer(
            "why",
            wording.say(alive ? "why.question" : "why.question.hot"),
            start.get().lead(subject, home.get()),
            lines(subject, alive),
            List.of()));
  }

  private static List<String> lines(Subject subject, boolean alive) {
    var wording = subject.wording();
    var lines = new ArrayList<String>();
    if (!alive) {
      lines.add(wording.say("why.live.unknown"));
    }
    subject
        .balance()
        .shares()
        .dressing()
        .map(share -> subject.formats().percent(share.percent()))
        .ifPresent(percent -> lines.add(wording.say(dressing(subject), percent)));
    if (subject.balance().shares().chillShrink().isPresent()) {
      lines.add(wording.say("why.water"));
    }
    if (subject.isSharer()) {
      lines.add(wording.say("flow.whole"));
    }
    return lines;
  }

  private static String dressing(Subject subject) {
    String key = subject.body().species() == Species.PORK ? "why.dressing.pork" : "why.dressing";
    return subject.body().liveGuessed() ? key + ".guessed" : key;
  }

  /**
   * The first weight of the body that is known.
   *
   * @param weight the weight
   * @param key of the sentence that compares it with what went home
   */
  private record Start(Weight weight, String key) {

    static Optional<Start> of(Subject subject) {
      var balance = subject.balance();
      String live = subject.body().liveGuessed() ? "why.lead.guessed" : "why.lead";
      return subject
          .body()
          .liveWeight()
          .filter(weight -> balance.boning().isPresent())
          .map(weight -> new Start(weight, live))
          .or(() -> balance.hot().map(weight -> new Start(weight, "why.lead.hot")))
          .or(() -> balance.cold().map(weight -> new Start(weight, "why.lead.cold")))
          .or(() -> balance.boning().map(weight -> new Start(weight, "why.lead.block")))
          .filter(start -> !subject.is(Outcome.WHOLE) || !start.key().equals("why.lead.cold"));
    }

    boolean isAlive() {
      return key.equals("why.lead") || key.equals("why.lead.guessed");
    }

    String lead(Subject subject, Weight home) {
      boolean whole = subject.is(Outcome.WHOLE);
      String start = isAlive() ? subject.live(weight) : subject.hung(weight);
      String end = whole ? subject.hung(home) : subject.home(home);
      String sentence = subject.wording().say(whole ? wholeKey() : key, start, end);
      var open = subject.openBatches();
      return open.isEmpty() || whole
          ? sentence
          : sentence
              + " "
              + subject
                  .wording()
                  .say(
                      "why.pending",
                      subject.home(Weight.sum(open.stream().map(BatchMeat::put).toList())));
    }

    private String wholeKey() {
      return key.replace("why.lead", "why.lead.whole");
    }
  }
}
