package gambrel.pages.owner.month;

import gambrel.insight.month.figures.MonthBody;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.Releases;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Release;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Which bodies of the month its figures leave out, and why. */
record LeftOutPart(MonthPart.Page page) implements MonthPart {
  private static final int MOST_NAMES = 8;
  private static final int MOST_TOLD = 3;

  List<String> sentences() {
    var out = month().leftOut();
    var held = out.stream().filter(body -> body.state() == State.HELD).toList();
    var released = out.stream().filter(body -> isReleased(body) && !held.contains(body)).toList();
    var curing =
        out.stream().filter(body -> !held.contains(body) && !released.contains(body)).toList();
    var sentences = new ArrayList<String>();
    told("left_out.held", held, body -> say("left_out.held", body.id()), sentences);
    names("left_out.curing", curing).ifPresent(sentences::add);
    told("left_out.released", released, this::released, sentences);
    return sentences;
  }

  /** Those whose loss holds them or was released, the dearest first; then the names of the rest. */
  private void told(
      String rest, List<MonthBody> bodies, Function<MonthBody, String> by, List<String> sentences) {
    var told =
        bodies.stream()
            .filter(body -> isReleased(body) || isLost(body))
            .sorted(Comparator.comparing(body -> worth(body).map(m -> -m.minor()).orElse(0L)))
            .limit(MOST_TOLD)
            .toList();
    told.forEach(body -> sentences.add(loss(by.apply(body), body)));
    names(rest, bodies.stream().filter(body -> !told.contains(body)).toList())
        .ifPresent(sentences::add);
  }

  private static boolean isLost(MonthBody body) {
    return body.account().decision().reasons().stream()
        .anyMatch(reason -> reason.code() == ReasonCode.LOSS_HIGH);
  }

  private Optional<Money> worth(MonthBody body) {
    return body.balance()
        .shares()
        .cuttingLoss()
        .flatMap(loss -> records().worth(body.species(), loss.part().fraction()));
  }

  private static boolean isReleased(MonthBody body) {
    return !body.account().decision().released().isEmpty();
  }

  private Optional<String> names(String key, List<MonthBody> bodies) {
    return bodies.isEmpty()
        ? Optional.empty()
        : Optional.of(say(key, wording().names(MonthBody.ids(bodies), MOST_NAMES)));
  }

  /** By whom a body was released and why. */
  private String released(MonthBody body) {
    var night = records().night();
    var releases = new Releases(night.shop().releases(), night.asOf());
    var last =
        Stream.of(Release.Action.CLOSE, Release.Action.RELEASE)
            .flatMap(action -> releases.of(body.id(), action).stream())
            .reduce((one, other) -> other);
    return last.map(release -> say("left_out.release", body.id(), release.by(), release.reason()))
        .orElse(body.id());
  }

  /** What a body lost on the bench, and what that is worth if values tell. */
  private String loss(String by, MonthBody body) {
    var worth = worth(body);
    return body.balance()
        .shares()
        .cuttingLoss()
        .map(
            loss ->
                say(
                    worth.isPresent() ? "left_out.loss.worth" : "left_out.loss",
                    by,
                    formats().weight(loss.part(), weights().cut()),
                    formats().percent(loss.percent()),
                    worth.map(formats()::money).orElse("")))
        .orElse(by);
  }
}
