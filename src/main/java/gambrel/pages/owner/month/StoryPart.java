package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.Ownership;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The month in a few sentences: killed, cut, taken home, lost, and what is open or held. */
record StoryPart(MonthPart.Page page) implements MonthPart {

  List<String> sentences() {
    var sentences = new ArrayList<>(List.of(killed()));
    var owners = Ownership.in(month().bodies());
    for (var whose : owners) {
      String cut = String.join(" ", cut(whose));
      if (!cut.isEmpty()) {
        sentences.add(owners.size() == 1 ? cut : say("summary.of", owner(whose), cut));
      }
      String lost = String.join(", ", lost(whose));
      if (!lost.isEmpty()) {
        sentences.add(say("summary.lost", owner(whose), lost));
      }
    }
    long open = number(State.OPEN);
    if (open > 0) {
      sentences.add(wording().counted("summary.open", open));
    }
    long held = number(State.HELD);
    sentences.add(held == 0 ? say("summary.held.none") : wording().counted("summary.held", held));
    return sentences;
  }

  private long number(State state) {
    return month().bodies().stream().filter(body -> body.state() == state).count();
  }

  private String killed() {
    var killed = month().killed();
    if (killed.isEmpty()) {
      return say("summary.killed.none");
    }
    var kinds =
        Stream.of(Species.values())
            .map(species -> MonthBody.of(species, killed))
            .filter(bodies -> !bodies.isEmpty())
            .map(this::kind)
            .collect(Collectors.joining(", "));
    return wording().counted("summary.killed", killed.size(), kinds);
  }

  private String kind(List<MonthBody> bodies) {
    String species = wording().kind(bodies.get(0).body().species());
    int head = bodies.stream().mapToInt(body -> body.body().head()).sum();
    return head == bodies.size()
        ? say("summary.number", species, count(bodies.size()))
        : say("summary.number.head", species, count(bodies.size()), count(head));
  }

  /** Sentences on the bodies of one owner: cut, left whole, and thrown away. */
  private List<String> cut(Ownership whose) {
    var wording = wording();
    var weights = weights();
    var sentences = new ArrayList<String>();
    var cut = whose.of(month().cut());
    var home = BodyFigure.TAKE_HOME_OF_BONING.of(cut);
    if (home.isKnown()) {
      sentences.add(
          wording.counted(
              "summary.cut",
              home.bodies(),
              weights.inProse(home.whole()),
              weights.inProse(home.part()),
              formats().percent(home.percent().orElseThrow())));
      int more = cut.size() - home.bodies();
      if (more > 0) {
        sentences.add(wording.counted("summary.cut.unweighed", more));
      }
    }
    var whole = whose.of(month().whole());
    if (!whole.isEmpty()) {
      var weight = Weight.sum(outputs(whole).map(Outputs::takeHome).toList());
      sentences.add(wording.counted("summary.whole", whole.size(), weights.inProse(weight)));
    }
    var left =
        Weight.sum(
            outputs(cut)
                .flatMap(o -> Stream.of(o.bone(), o.fat(), o.waste()).flatMap(Optional::stream))
                .toList());
    if (!left.isZero()) {
      sentences.add(say("summary.left", weights.inProse(left)));
    }
    return sentences;
  }

  private static Stream<Outputs> outputs(List<MonthBody> bodies) {
    return bodies.stream().flatMap(body -> body.balance().outputs().stream());
  }

  private List<String> lost(Ownership whose) {
    return Stream.of(BodyFigure.CHILL, BodyFigure.AGEING, BodyFigure.BENCH)
        .flatMap(
            loss -> {
              var lost = loss.of(whose.of(loss.in(month())));
              return lost.isKnown()
                  ? Stream.of(say("summary.lost." + loss.id(), weights().inProse(lost.part())))
                  : Stream.empty();
            })
        .toList();
  }
}
