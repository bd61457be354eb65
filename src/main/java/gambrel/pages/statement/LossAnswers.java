package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.account.Entitlement;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers "Why so much less than it weighed alive?". */
final class LossAnswers extends StatementPart {
  private final boolean alive = body.liveWeight().isPresent() && balance.boning().isPresent();

  LossAnswers(StatementPart statement) {
    super(statement);
  }

  /** The first known weight of the body, and the sentence that compares the take-home with it. */
  private record Start(Weight weight, String key) {}

  /** The answer; empty if there is no weight to compare with, or no end product yet. */
  Optional<Answer> why() {
    var home = balance.outputs().map(outputs -> account.sum(Entitlement::takeHome));
    var start = start().filter(s -> home.filter(h -> h.compareTo(s.weight()) < 0).isPresent());
    String question = alive ? "why.question" : "why.question.hot";
    return start.map(from -> answer(question, lead(from, home.orElseThrow()), reasons()));
  }

  private Optional<Start> start() {
    String live = body.liveGuessed() ? "why.lead.guessed" : "why.lead";
    return body.liveWeight()
        .filter(weight -> alive)
        .map(weight -> new Start(weight, live))
        .or(() -> balance.hot().map(weight -> new Start(weight, "why.lead.hot")))
        .or(() -> balance.cold().map(weight -> new Start(weight, "why.lead.cold")))
        .or(() -> balance.boning().map(weight -> new Start(weight, "why.lead.block")))
        .filter(start -> !is(Outcome.WHOLE) || !start.key().equals("why.lead.cold"));
  }

  /** From the first weight to the take-home, of the whole body. */
  private String lead(Start start, Weight home) {
    String weight = alive ? live(start.weight()) : hung(start.weight());
    String sentence =
        is(Outcome.WHOLE)
            ? say(start.key().replace("why.lead", "why.lead.whole"), weight, hung(home))
            : say(start.key(), weight, headline(home));
    return isSharer() ? sayForHead("why.whole", formats.inside(sentence)) : sentence;
  }

  private Optional<String> pending() {
    var put = openBatches().stream().map(BatchMeat::put).toList();
    return put.isEmpty()
        ? Optional.empty()
        : Optional.of(say("why.pending", headline(Weight.sum(put))));
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

  private List<String> reasons() {
    var reasons = new ArrayList<String>();
    if (!is(Outcome.WHOLE)) {
      pending().ifPresent(reasons::add);
    }
    ofHanging().ifPresent(reasons::add);
    if (isSharer()) {
      String part = is(Outcome.WHOLE) ? hung(own.takeHome()) : home(own.takeHome());
      reasons.add(say("why.yours", part));
    }
    if (is(Outcome.CUT) && !onTop().isEmpty()) {
      reasons.add(say("why.on_top", String.join(", ", onTop())));
    }
    if (!alive) {
      reasons.add(say("why.live.unknown"));
    }
    return reasons;
  }
}
