package gambrel.wording;

import gambrel.decision.State;
import gambrel.statement.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Is that normal? Held against published ranges and against the shop's own bodies of the kind. */
final class NormalAnswer {
  private final Subject subject;
  private final Wording wording;
  private final List<String> lines = new ArrayList<>();
  private boolean usual = true;

  private NormalAnswer(Subject subject) {
    this.subject = subject;
    this.wording = subject.wording();
  }

  /** Empty where nothing is known to hold it against, and while the figures are in doubt. */
  static Optional<Answer> of(Subject subject) {
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
    lines.add(wording.say("normal.depends"));
    String lead = wording.say(usual ? "normal.lead.within" : "normal.lead.outside");
    return Optional.of(
        new Answer("normal", wording.say("normal.question"), lead, lines, List.of()));
  }

  private void published(String figure, String key, BigFraction percent) {
    subject
        .night()
        .shop()
        .ranges()
        .of(subject.body().species(), figure)
        .ifPresent(
            range ->
                lines.add(
                    wording.say(
                            key,
                            subject.formats().percent(percent),
                            subject.formats().percent(range.low()),
                            subject.formats().percent(range.high()),
                            subject.wording().source(range))
                        + verdict(range.compare(percent), isGuess(figure))));
  }

  private boolean isGuess(String figure) {
    return figure.equals("dressing") && subject.body().liveGuessed();
  }

  /** A guess is shown beside the range but proves nothing. */
  private String verdict(int compared, boolean guessed) {
    if (compared == 0 || guessed) {
      return "";
    }
    usual = false;
    return " " + wording.say(compared < 0 ? "normal.below" : "normal.above");
  }

  private void own(BigFraction percent) {
    OwnBodies.of(subject)
        .ifPresent(
            others ->
                lines.add(
                    wording.say(
                            "normal.home",
                            subject.formats().percent(percent),
                            subject.formats().count(others.count()),
                            kind(),
                            subject.formats().percent(others.least()),
                            subject.formats().percent(others.most()))
                        + verdict(others.compare(percent), false)));
  }

  private String kind() {
    return subject.wording().category(subject.body());
  }
}
