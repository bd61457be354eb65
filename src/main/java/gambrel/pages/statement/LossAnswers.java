package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers "Why so much less than it weighed alive?". */
final class LossAnswers extends StatementPart {
  LossAnswers(StatementPart statement) {
    super(statement);
  }

  /**
   * The first weight of the body that is known.
   *
   * @param weight the weight
   * @param alive whether it is the live weight
   * @param key key of the sentence that compares it with the take-home weight
   */
  private record Start(Weight weight, boolean alive, String key) {}

  /** The answer; empty if there is no weight to compare with, or no end product yet. */
  Optional<Answer> why() {
    var home = balance.outputs().map(Outputs::takeHome);
    var start = start().filter(s -> home.filter(h -> h.compareTo(s.weight()) < 0).isPresent());
    return start.map(
        from ->
            answer(
                from.alive() ? "why.question" : "why.question.hot",
                lead(from, home.orElseThrow()),
                reasons(from.alive())));
  }

  private Optional<Start> start() {
    String live = body.liveGuessed() ? "why.lead.guessed" : "why.lead";
    return body.liveWeight()
        .filter(weight -> balance.boning().isPresent())
        .map(weight -> new Start(weight, true, live))
        .or(() -> balance.hot().map(weight -> new Start(weight, false, "why.lead.hot")))
        .or(() -> balance.cold().map(weight -> new Start(weight, false, "why.lead.cold")))
        .or(() -> balance.boning().map(weight -> new Start(weight, false, "why.lead.block")))
        .filter(start -> !is(Outcome.WHOLE) || !start.key().equals("why.lead.cold"));
  }

  private String lead(Start start, Weight home) {
    String weight = start.alive() ? live(start.weight()) : hung(start.weight());
    if (is(Outcome.WHOLE)) {
      return say(start.key().replace("why.lead", "why.lead.whole"), weight, hung(home));
    }
    var put = openBatches().stream().map(BatchMeat::put).toList();
    if (!put.isEmpty()) {
      String sentence = say(start.key(), weight, headline(home));
      return sentence + ' ' + say("why.pending", headline(Weight.sum(put)));
    }
    return say(start.key(), weight, headline(home));
  }

  /** Take-home as a percentage of the weight that hung: of the cold, else of the hot weight. */
  private Optional<String> ofHanging() {
    var shares = balance.shares();
    return shares
        .takeHomeOfCold()
        .map(share -> hanging("why.of_cold", share))
        .or(() -> shares.takeHomeOfHot().map(share -> hanging("why.of_hot", share)))
        .filter(sentence -> is(Outcome.CUT) && openBatches().isEmpty());
  }

  private String hanging(String key, Share share) {
    return say(key, formats.percent(share.percent()), hung(share.whole()));
  }

  private List<String> reasons(boolean alive) {
    var reasons = new ArrayList<String>();
    ofHanging().ifPresent(reasons::add);
    if (!alive) {
      reasons.add(say("why.live.unknown"));
    }
    if (isSharer()) {
      reasons.add(say("flow.whole"));
    }
    return reasons;
  }
}
