package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers "Why so much less than it weighed alive?". */
final class WhyAnswer {

  private WhyAnswer() {}

  /** The answer; empty if there is no weight to compare with, or no end product yet. */
  static Optional<Answer> of(StatementContext subject) {
    var start = Start.of(subject);
    var home = subject.outputs().map(Outputs::takeHome);
    if (start.isEmpty() || home.isEmpty() || home.get().compareTo(start.get().weight()) >= 0) {
      return Optional.empty();
    }
    var wording = subject.wording();
    boolean alive = start.get().alive();
    return Optional.of(
        new Answer(
            "why",
            wording.say(alive ? "why.question" : "why.question.hot"),
            start.get().lead(subject, home.get()),
            lines(subject, alive),
            List.of()));
  }

  private static List<String> lines(StatementContext subject, boolean alive) {
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

  private static String dressing(StatementContext subject) {
    String key = subject.isSkinned() ? "why.dressing" : "why.dressing.pork";
    return subject.body().liveGuessed() ? key + ".guessed" : key;
  }

  /**
   * The first weight of the body that is known.
   *
   * @param weight the weight
   * @param alive whether it is the live weight
   * @param key key of the sentence that compares it with the take-home weight
   */
  private record Start(Weight weight, boolean alive, String key) {

    static Optional<Start> of(StatementContext subject) {
      var balance = subject.balance();
      String live = subject.body().liveGuessed() ? "why.lead.guessed" : "why.lead";
      return subject
          .body()
          .liveWeight()
          .filter(weight -> balance.boning().isPresent())
          .map(weight -> new Start(weight, true, live))
          .or(() -> balance.hot().map(weight -> new Start(weight, false, "why.lead.hot")))
          .or(() -> balance.cold().map(weight -> new Start(weight, false, "why.lead.cold")))
          .or(() -> balance.boning().map(weight -> new Start(weight, false, "why.lead.block")))
          .filter(start -> !subject.is(Outcome.WHOLE) || !start.key().equals("why.lead.cold"));
    }

    String lead(StatementContext subject, Weight home) {
      var wording = subject.wording();
      String start = alive ? subject.live(weight) : subject.hung(weight);
      if (subject.is(Outcome.WHOLE)) {
        String whole = key.replace("why.lead", "why.lead.whole");
        return wording.say(whole, start, subject.hung(home));
      }
      String sentence = wording.say(key, start, subject.home(home));
      var put = subject.openBatches().stream().map(BatchMeat::put).toList();
      return put.isEmpty()
          ? sentence
          : sentence + " " + wording.say("why.pending", subject.home(Weight.sum(put)));
    }
  }
}
