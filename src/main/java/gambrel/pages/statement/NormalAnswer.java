package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Exact;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Outcome;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Answers "Is that normal?" with published ranges and with earlier bodies of the shop. */
final class NormalAnswer extends StatementPart {
  private final List<String> lines = new ArrayList<>();
  private boolean usual = true;

  private NormalAnswer(StatementContext subject) {
    super(subject);
  }

  /** The answer; empty if there is nothing to compare with, or if the body is held. */
  static Optional<Answer> of(StatementContext subject) {
    return subject.account().decision().state() == State.HELD
        ? Optional.empty()
        : new NormalAnswer(subject).answer();
  }

  private Optional<Answer> answer() {
    var shares = subject.balance().shares();
    String dressing = subject.body().liveGuessed() ? "normal.dressing.guessed" : "normal.dressing";
    shares.dressing().ifPresent(share -> published("dressing", dressing, share.percent()));
    shares.chillShrink().ifPresent(share -> published("chill", "normal.chill", share.percent()));
    shares
        .takeHomeOfCold()
        .filter(share -> subject.openBatches().isEmpty())
        .ifPresent(share -> own(share.percent()));
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    lines.add(say("normal.depends"));
    String lead = say(usual ? "normal.lead.within" : "normal.lead.outside");
    return Optional.of(new Answer("normal", say("normal.question"), lead, lines, List.of()));
  }

  private void published(String figure, String key, BigFraction percent) {
    boolean guessed = figure.equals("dressing") && subject.body().liveGuessed();
    var range = subject.night().shop().ranges().of(subject.body().species(), figure);
    range.ifPresent(
        usual ->
            lines.add(
                say(
                        key,
                        percent(percent),
                        formats.percent(usual.low()),
                        formats.percent(usual.high()),
                        wording.source(usual))
                    + verdict(usual.compare(percent), guessed)));
  }

  /** How a figure compares with a range; empty if it is within, or rests on a guessed weight. */
  private String verdict(int compared, boolean guessed) {
    if (compared == 0 || guessed) {
      return "";
    }
    usual = false;
    return " " + say(compared < 0 ? "normal.below" : "normal.above");
  }

  private void own(BigFraction percent) {
    OwnBodies.of(subject)
        .ifPresent(
            others ->
                lines.add(
                    say(
                            "normal.home",
                            percent(percent),
                            formats.count(others.count()),
                            wording.category(subject.body()),
                            percent(others.least()),
                            percent(others.most()))
                        + verdict(others.compare(percent), false)));
  }

  private String percent(BigFraction value) {
    return formats.percent(value);
  }

  /**
   * The take-home percentages of earlier bodies of the same species and class at this shop.
   *
   * @param count the number of bodies
   * @param least the smallest take-home of cold weight, in per cent
   * @param most the largest take-home of cold weight, in per cent
   */
  private record OwnBodies(int count, BigFraction least, BigFraction most) {
    /** With fewer bodies, a range would disclose the figures of single customers. */
    private static final int FEWEST = 5;

    private static final int MOST = 20;

    /**
     * The last 20 bodies cut before the subject's body, so that a later body changes no page; empty
     * if there are fewer than five.
     */
    static Optional<OwnBodies> of(StatementContext subject) {
      var cut = subject.balance().lastCut();
      if (cut.isEmpty() || subject.body().category().isEmpty()) {
        return Optional.empty();
      }
      var percents =
          subject.night().bodies().values().stream()
              .filter(account -> isOfKind(account, subject.body()) && isDone(account))
              .filter(account -> lastCut(account).isBefore(cut.get().toInstant()))
              .sorted(Comparator.comparing(OwnBodies::lastCut).reversed())
              .limit(MOST)
              .map(account -> account.balance().shares().takeHomeOfCold().orElseThrow().percent())
              .sorted()
              .toList();
      return percents.size() < FEWEST
          ? Optional.empty()
          : Optional.of(
              new OwnBodies(percents.size(), percents.get(0), percents.get(percents.size() - 1)));
    }

    /** Whether a percentage, as printed, is below (−1), within (0) or above (1) the range. */
    int compare(BigFraction percent) {
      var printed = Exact.round(percent, 1);
      if (printed.compareTo(Exact.round(least, 1)) < 0) {
        return -1;
      }
      return printed.compareTo(Exact.round(most, 1)) > 0 ? 1 : 0;
    }

    private static boolean isOfKind(BodyAccount account, Body body) {
      return account.body().species() == body.species()
          && account.body().category().equals(body.category());
    }

    private static boolean isDone(BodyAccount account) {
      return account.isSettled()
          && account.body().outcome() == Outcome.CUT
          && account.balance().shares().takeHomeOfCold().isPresent()
          && account.balance().lastCut().isPresent();
    }

    private static Instant lastCut(BodyAccount account) {
      return account.balance().lastCut().orElseThrow().toInstant();
    }
  }
}
