package gambrel.ownerpages;

import gambrel.month.BodyFigures;
import gambrel.month.Ownership;
import gambrel.month.MonthBodies;
import gambrel.balance.Outputs;
import gambrel.cuts.Species;
import gambrel.decision.State;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The month in a few sentences: killed, cut, taken home, lost, and what is not over yet. */
final class StoryPart {
  private final MonthBodies month;
  private final Wording wording;
  private final Places places;

  StoryPart(MonthBodies month, Wording wording, Places places) {
    this.month = month;
    this.wording = wording;
    this.places = places;
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
            owners.size() == 1
                ? text
                : wording.say("summary.of", wording.say("summary." + ownership.id()), text));
      }
      lost(ownership).ifPresent(sentences::add);
    }
    waits(State.OPEN, "summary.open").ifPresent(sentences::add);
    sentences.add(
        waits(State.HELD, "summary.held").orElseGet(() -> wording.say("summary.held.none")));
    return sentences;
  }

  private String killed() {
    var killed = month.killed();
    if (killed.isEmpty()) {
      return wording.say("summary.killed.none");
    }
    var kinds =
        Stream.of(Species.values())
            .map(s -> killed.stream().filter(a -> a.body().species() == s).toList())
            .filter(of -> !of.isEmpty())
            .map(this::kind)
            .toList();
    return wording.count(
        "summary.killed", killed.size(), count(killed.size()), String.join(", ", kinds));
  }

  private String kind(List<BodyAccount> bodies) {
    String species = wording.say("summary.kind." + bodies.get(0).body().species().id());
    int head = bodies.stream().mapToInt(a -> a.body().head()).sum();
    return head == bodies.size()
        ? wording.say("summary.number", species, count(bodies.size()))
        : wording.say("summary.number.head", species, count(bodies.size()), count(head));
  }

  /** What was cut, left whole and thrown away of somebody's bodies. */
  private List<String> weights(Ownership ownership) {
    return Stream.of(cut(ownership), whole(ownership), left(ownership))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<String> cut(Ownership ownership) {
    var cut = ownership.of(month.cut());
    var home = BodyFigures.TAKE_HOME_OF_BONING.of(cut);
    if (!home.isKnown()) {
      return Optional.empty();
    }
    String sentence =
        wording.count(
            "summary.cut",
            home.bodies(),
            count(home.bodies()),
            places.inProse(home.whole()),
            places.inProse(home.part()),
            wording.formats().percent(home.percent().orElseThrow()));
    int more = cut.size() - home.bodies();
    return Optional.of(
        more == 0
            ? sentence
            : sentence + " " + wording.count("summary.cut.unweighed", more, count(more)));
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
            wording.count(
                "summary.whole",
                whole.size(),
                count(whole.size()),
                places.inProse(weight)));
  }

  private Optional<String> lost(Ownership ownership) {
    var killed = ownership.of(month.killed());
    var parts = new ArrayList<String>();
    var chill = BodyFigures.CHILL.of(killed);
    if (chill.isKnown()) {
      parts.add(wording.say("summary.lost.chill", places.inProse(chill.part())));
    }
    var ageing = BodyFigures.AGEING.of(killed);
    if (ageing.isKnown()) {
      parts.add(wording.say("summary.lost.ageing", places.inProse(ageing.part())));
    }
    var bench = BodyFigures.BENCH.of(ownership.of(month.cut()));
    if (bench.isKnown()) {
      parts.add(wording.say("summary.lost.bench", places.inProse(bench.part())));
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            wording.say(
                "summary.lost",
                wording.say("summary." + ownership.id()),
                String.join(", ", parts)));
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
        : Optional.of(wording.say("summary.left", places.inProse(left)));
  }

  private Optional<String> waits(State state, String key) {
    long number = month.bodies().stream().filter(a -> a.decision().state() == state).count();
    return number == 0
        ? Optional.empty()
        : Optional.of(wording.count(key, number, count(number)));
  }

  private String count(long number) {
    return wording.formats().count(number);
  }
}
