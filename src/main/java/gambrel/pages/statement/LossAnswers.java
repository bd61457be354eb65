package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.PublishedRanges;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Answers about what the body lost on its way to the boxes. */
final class LossAnswers extends StatementPart {
  /** With fewer bodies, a range would disclose the figures of single customers. */
  private static final int FEWEST = 5;

  private static final int MOST = 20;

  private final List<String> lines = new ArrayList<>();
  private boolean usual = true;

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

  /**
   * Answers "Why so much less than it weighed alive?"; empty if there is no weight to compare with,
   * or no end product yet.
   */
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
    return say(start.key(), weight, headline(home)) + ofHanging();
  }

  /** Take-home as a percentage of the weight that hung: of the cold, else of the hot weight. */
  private String ofHanging() {
    var shares = balance.shares();
    var cold = shares.takeHomeOfCold().map(share -> hanging("why.of_cold", share));
    return cold.or(() -> shares.takeHomeOfHot().map(share -> hanging("why.of_hot", share)))
        .map(sentence -> ' ' + sentence)
        .orElse("");
  }

  private String hanging(String key, Share share) {
    return say(key, formats.percent(share.percent()), hung(share.whole()));
  }

  private List<String> reasons(boolean alive) {
    var reasons = new ArrayList<String>();
    if (!alive) {
      reasons.add(say("why.live.unknown"));
    }
    if (isSharer()) {
      reasons.add(say("flow.whole"));
    }
    return reasons;
  }

  /**
   * Answers "Is that normal?" with published ranges and with earlier bodies of the shop; empty if
   * there is nothing to compare with.
   */
  Optional<Answer> normal() {
    var shares = balance.shares();
    boolean guessed = body.liveGuessed();
    String dressing = guessed ? "normal.dressing.guessed" : "normal.dressing";
    shares.dressing().ifPresent(share -> published("dressing", dressing, share, guessed));
    shares.chillShrink().ifPresent(share -> published("chill", "normal.chill", share, false));
    shares
        .takeHomeOfCold()
        .filter(share -> openBatches().isEmpty())
        .ifPresent(share -> own(share.percent()));
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    lines.add(say("normal.depends"));
    return Optional.of(
        answer(
            "normal.question", say(usual ? "normal.lead.within" : "normal.lead.outside"), lines));
  }

  private void published(String figure, String key, Share share, boolean guessed) {
    var percent = share.percent();
    var published = night.shop().ranges().of(body.species(), figure);
    published.ifPresent(
        range ->
            lines.add(
                say(
                        key,
                        formats.percent(percent),
                        formats.percent(range.low()),
                        formats.percent(range.high()),
                        wording.source(range))
                    + verdict(guessed ? 0 : range.compare(percent))));
  }

  /** How a figure compares with a range; empty if it is within. */
  private String verdict(int compared) {
    usual &= compared == 0;
    return compared == 0 ? "" : " " + say(compared < 0 ? "normal.below" : "normal.above");
  }

  private void own(BigFraction percent) {
    var others = percentsOfEarlier();
    if (others.size() >= FEWEST) {
      var least = others.get(0);
      var most = others.get(others.size() - 1);
      var range = new PublishedRanges.Range(Exact.round(least, 1), Exact.round(most, 1), "", "");
      lines.add(
          say(
                  "normal.home",
                  formats.percent(percent),
                  formats.count(others.size()),
                  wording.category(body),
                  formats.percent(least),
                  formats.percent(most))
              + verdict(range.compare(percent)));
    }
  }

  /**
   * Take-home of cold weight, in per cent and smallest first, of the last 20 bodies of the same
   * species and class that were cut before this one. A later body changes no page.
   */
  private List<BigFraction> percentsOfEarlier() {
    var cut = balance.lastCut();
    if (cut.isEmpty() || body.category().isEmpty()) {
      return List.of();
    }
    return night.bodies().values().stream()
        .filter(this::isComparable)
        .filter(other -> lastCut(other).isBefore(cut.get().toInstant()))
        .sorted(Comparator.comparing(LossAnswers::lastCut).reversed())
        .limit(MOST)
        .map(other -> other.balance().shares().takeHomeOfCold().orElseThrow().percent())
        .sorted()
        .toList();
  }

  private boolean isComparable(BodyAccount other) {
    return other.body().species() == body.species()
        && other.body().category().equals(body.category())
        && other.isSettled()
        && other.body().isCut()
        && other.balance().shares().takeHomeOfCold().isPresent()
        && other.balance().lastCut().isPresent();
  }

  private static Instant lastCut(BodyAccount account) {
    return account.balance().lastCut().orElseThrow().toInstant();
  }
}
