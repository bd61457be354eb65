package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Ratio;
import gambrel.pages.owner.WeightPrinter;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The month in a few sentences: killed, cut, taken home, lost, and what is not over yet. */
final class StoryPart {
  private final MonthPage page;
  private final MonthBodies month;
  private final WeightPrinter places;

  StoryPart(MonthPage page) {
    this.page = page;
    this.month = page.records().bodies();
    this.places = page.places();
  }

  List<String> sentences() {
    var sentences = new ArrayList<String>();
    sentences.add(killed());
    var owners = Ownership.in(month.bodies());
    for (var ownership : owners) {
      var weights = weights(ownership);
      if (!weights.isEmpty()) {
        String text = String.join(" ", weights);
        sentences.add(
            owners.size() == 1 ? text : page.say("summary.of", page.owner(ownership), text));
      }
      lost(ownership).ifPresent(sentences::add);
    }
    waits(State.OPEN, "summary.open").ifPresent(sentences::add);
    sentences.add(waits(State.HELD, "summary.held").orElseGet(() -> page.say("summary.held.none")));
    return sentences;
  }

  private String killed() {
    var killed = month.killed();
    if (killed.isEmpty()) {
      return page.say("summary.killed.none");
    }
    var kinds =
        Stream.of(Species.values())
            .map(s -> killed.stream().filter(a -> a.body().species() == s).toList())
            .filter(of -> !of.isEmpty())
            .map(this::kind)
            .toList();
    return page.wording()
        .count(
            "summary.killed", killed.size(), page.count(killed.size()), String.join(", ", kinds));
  }

  private String kind(List<MonthBody> bodies) {
    String species = page.kind(bodies.get(0).body().species());
    int head = bodies.stream().mapToInt(a -> a.body().head()).sum();
    return head == bodies.size()
        ? page.say("summary.number", species, page.count(bodies.size()))
        : page.say("summary.number.head", species, page.count(bodies.size()), page.count(head));
  }

  /** What was cut, left whole and thrown away of an owner's bodies. */
  private List<String> weights(Ownership ownership) {
    return Stream.of(cut(ownership), whole(ownership), left(ownership))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<String> cut(Ownership ownership) {
    var cut = ownership.of(month.cut());
    var home = BodyFigure.TAKE_HOME_OF_BONING.of(cut);
    if (!home.isKnown()) {
      return Optional.empty();
    }
    String sentence =
        page.wording()
            .count(
                "summary.cut",
                home.bodies(),
                page.count(home.bodies()),
                places.inProse(home.whole()),
                places.inProse(home.part()),
                page.formats().percent(home.percent().orElseThrow()));
    int more = cut.size() - home.bodies();
    return Optional.of(
        more == 0 ? sentence : sentence + " " + page.counted("summary.cut.unweighed", more));
  }

  private Optional<String> whole(Ownership ownership) {
    var whole = ownership.of(month.whole());
    var weight =
        Weight.sum(
            whole.stream()
                .flatMap(a -> a.balance().outputs().map(Outputs::takeHome).stream())
                .toList());
    return whole.isEmpty()
        ? Optional.empty()
        : Optional.of(
            page.wording()
                .count(
                    "summary.whole",
                    whole.size(),
                    page.count(whole.size()),
                    places.inProse(weight)));
  }

  private Optional<String> lost(Ownership ownership) {
    var killed = ownership.of(month.killed());
    var parts = new ArrayList<String>();
    lost(parts, "summary.lost.chill", BodyFigure.CHILL.of(killed));
    lost(parts, "summary.lost.ageing", BodyFigure.AGEING.of(killed));
    lost(parts, "summary.lost.bench", BodyFigure.BENCH.of(ownership.of(month.cut())));
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(page.say("summary.lost", page.owner(ownership), String.join(", ", parts)));
  }

  private void lost(List<String> parts, String key, Ratio lost) {
    if (lost.isKnown()) {
      parts.add(page.say(key, places.inProse(lost.part())));
    }
  }

  private Optional<String> left(Ownership ownership) {
    var left =
        Weight.sum(
            ownership.of(month.cut()).stream()
                .flatMap(a -> a.balance().outputs().stream())
                .flatMap(o -> Stream.of(o.bone(), o.fat(), o.waste()).flatMap(Optional::stream))
                .toList());
    return left.isZero()
        ? Optional.empty()
        : Optional.of(page.say("summary.left", places.inProse(left)));
  }

  private Optional<String> waits(State state, String key) {
    long number = month.bodies().stream().filter(b -> b.state() == state).count();
    return number == 0 ? Optional.empty() : Optional.of(page.counted(key, number));
  }
}
