package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.PublishedRanges;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Answers "Is that normal?" with published ranges and with earlier bodies of the shop. */
final class NormalAnswer extends StatementPart {
  /** With fewer bodies, a range would disclose the figures of single customers. */
  private static final int FEWEST = 5;

  private static final int MOST = 20;

  private final List<String> lines = new ArrayList<>();
  private boolean usual = true;

  NormalAnswer(StatementPart statement) {
    super(statement);
  }

  /** The answer; empty if there is nothing to compare with. */
  Optional<Answer> answer() {
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
        .sorted(Comparator.comparing(NormalAnswer::lastCut).reversed())
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
