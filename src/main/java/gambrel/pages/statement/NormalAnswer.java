package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.decision.State;
import java.util.ArrayList;
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
}
