package gambrel.pages.owner.month;

import gambrel.insight.month.figures.MonthBody;
import gambrel.trade.decision.Releases;
import gambrel.trade.decision.State;
import gambrel.trade.shop.Release;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which bodies of the month its figures leave out, and why. */
record LeftOutPart(MonthPart.Page page) implements MonthPart {
  private static final int MOST_NAMES = 8;
  private static final int MOST_RELEASED = 3;

  List<String> sentences() {
    var out = month().leftOut();
    var held = out.stream().filter(body -> body.state() == State.HELD).toList();
    var released = out.stream().filter(body -> isReleased(body) && !held.contains(body)).toList();
    var curing =
        out.stream().filter(body -> !held.contains(body) && !released.contains(body)).toList();
    var sentences = new ArrayList<String>();
    names("left_out.held", held).ifPresent(sentences::add);
    names("left_out.curing", curing).ifPresent(sentences::add);
    released.stream().limit(MOST_RELEASED).map(this::released).forEach(sentences::add);
    names(
            "left_out.released",
            released.subList(Math.min(MOST_RELEASED, released.size()), released.size()))
        .ifPresent(sentences::add);
    return sentences;
  }

  private static boolean isReleased(MonthBody body) {
    return !body.account().decision().released().isEmpty();
  }

  private Optional<String> names(String key, List<MonthBody> bodies) {
    return bodies.isEmpty()
        ? Optional.empty()
        : Optional.of(say(key, wording().names(MonthBody.ids(bodies), MOST_NAMES)));
  }

  /** By whom a body was released and why, and what it lost on the bench. */
  private String released(MonthBody body) {
    var night = records().night();
    var releases = new Releases(night.shop().releases(), night.asOf());
    var last =
        Stream.of(Release.Action.CLOSE, Release.Action.RELEASE)
            .flatMap(action -> releases.of(body.id(), action).stream())
            .reduce((one, other) -> other);
    String by =
        last.map(release -> say("left_out.release", body.id(), release.by(), release.reason()))
            .orElse(body.id());
    return body.balance()
        .shares()
        .cuttingLoss()
        .map(
            loss ->
                say(
                    "left_out.loss",
                    by,
                    formats().weight(loss.part(), weights().cut()),
                    formats().percent(loss.percent())))
        .orElse(by);
  }
}
