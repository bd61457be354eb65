package gambrel.cause;

import gambrel.balance.Outputs;
import gambrel.measure.Weight;
import gambrel.reckoning.Night;
import gambrel.weighing.Weighing;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;

/** Says in words what speaks for a change and what would come of it. */
final class Evidence {
  private final BodyFacts suspect;
  private final Candidate candidate;
  private final Night then;
  private final Speech speech;
  private final Traces traces;

  Evidence(Traces traces, BodyFacts suspect, Candidate candidate, Night then) {
    this.traces = traces;
    this.suspect = suspect;
    this.candidate = candidate;
    this.then = then;
    this.speech = new Speech(traces.night());
  }

  String text() {
    return what() + " " + outcome();
  }

  private Weighing first() {
    return candidate.touches().get(0).weighing();
  }

  private String what() {
    return switch (candidate.cause()) {
      case WRONG_BODY -> tickets() + " keyed to " + first().body() + between() + ".";
      case CHANGEOVER ->
          tickets() + " keyed to " + first().body() + ", next to those of " + other() + ".";
      case DOUBLE_PRESS -> twice();
      case TARE_LEFT_ON -> tare();
      case HOOK ->
          list() + " may hold a hook or roller of " + witness() + ": the chill shrink of "
              + suspect.id() + shrinks(suspect) + ".";
      case DECIMAL ->
          Speech.ticket(first()) + " says " + speech.what(first()) + "; " + witness() + ".";
      case UNIT -> unit();
      default -> "";
    };
  }

  private String other() {
    return candidate.touches().get(0).bodyThen();
  }

  private String witness() {
    return candidate.witness().map(Candidate.Witness::text).orElse("");
  }

  private String between() {
    return candidate.estimated()
        ? neighbours()
        : ", which has one too many; " + other() + " lacks one";
  }

  private String neighbours() {
    String where = candidate.penalty() < WrongBody.BESIDE ? " between" : " next to";
    return where + " tickets of " + other();
  }

  private String tickets() {
    return candidate.touches().size() == 1
        ? Speech.ticket(first()) + " (" + speech.what(first()) + ") was"
        : list() + " were";
  }

  /** {@code Tickets 5120 to 5163 (44 weighings, 52.300 kg)}. */
  private String list() {
    if (candidate.touches().size() == 1) {
      return Speech.ticket(first()) + " (" + speech.what(first()) + ")";
    }
    var weighings = candidate.touches().stream().map(Touch::weighing).toList();
    var last = weighings.get(weighings.size() - 1);
    String from = first().ticket().isEmpty() ? first().place().toString() : first().ticket();
    String to = last.ticket().isEmpty() ? last.place().toString() : last.ticket();
    return "Tickets "
        + from
        + " to "
        + to
        + " ("
        + weighings.size()
        + " weighings, "
        + speech.weight(Weighing.total(weighings))
        + ")";
  }

  private String twice() {
    var earlier = candidate.witness().flatMap(Candidate.Witness::weighing).orElseThrow();
    long seconds = Duration.between(earlier.time(), first().time()).toSeconds();
    return Speech.ticket(first())
        + " ("
        + speech.what(first())
        + ") repeats "
        + Speech.ticket(earlier).toLowerCase(Locale.ROOT)
        + " after "
        + seconds
        + " s.";
  }

  private String tare() {
    return candidate.touches().size() == 1
        ? Speech.ticket(first())
            + " ("
            + speech.what(first())
            + ") shows no tare; "
            + witness()
            + " is usual for it."
        : candidate.touches().size()
            + " weighings of "
            + suspect.id()
            + " show no tare, from "
            + Speech.ticket(first()).toLowerCase(Locale.ROOT)
            + " on; others of their codes do.";
  }

  private String unit() {
    String unit = ((Remedy.In) candidate.touches().get(0).remedy()).unit().id();
    if (candidate.touches().size() == 1) {
      return Speech.ticket(first())
          + " says "
          + speech.what(first())
          + "; "
          + witness()
          + ". It may be in "
          + unit
          + ".";
    }
    return list()
        + " of scale "
        + first().scale().id()
        + " on "
        + first().date()
        + " may be in "
        + unit
        + ", not "
        + first().unit().id()
        + ".";
  }

  private String outcome() {
    var bodies = new LinkedHashSet<>(List.of(suspect.id()));
    bodies.addAll(candidate.bodies());
    var parts = new ArrayList<String>();
    for (String body : bodies.stream().limit(3).toList()) {
      parts.add(figures(traces.facts(then, body)));
    }
    String how =
        candidate.touches().get(0).remedy() instanceof Remedy.Move move
            ? "Moved to " + move.body()
            : candidate.cause() == Cause.DOUBLE_PRESS ? "Without it" : change();
    return how + ": " + String.join("; ", parts) + ".";
  }

  private String change() {
    var touch = candidate.touches().get(0);
    boolean one = candidate.touches().size() == 1;
    long net = touch.netThen(traces.night().shop().settings().unit());
    return one ? "With " + speech.weight(new Weight(net)) : "Put right";
  }

  private String figures(BodyFacts facts) {
    var balance = facts.balance();
    var loss = balance.outputs().flatMap(Outputs::cuttingLoss);
    var boning = balance.boning();
    var parts = new ArrayList<String>();
    if (loss.isPresent() && boning.filter(w -> !w.isZero()).isPresent()) {
      var percent = loss.get().percentOf(boning.get());
      parts.add("loss of " + facts.id() + " " + Speech.percent(percent));
    }
    boolean rail = candidate.touches().stream().anyMatch(t -> t.weighing().step().isRail());
    if (rail && balance.shares().chillShrink().isPresent()) {
      parts.add("chill shrink of " + facts.id() + shrinks(facts).replace(" is", ""));
    }
    return parts.isEmpty() ? facts.id() + " has all its weights" : String.join(", ", parts);
  }

  private static String shrinks(BodyFacts facts) {
    return facts
        .balance()
        .shares()
        .chillShrink()
        .map(shrink -> " is " + Speech.percent(shrink.percent()))
        .orElse(" is not known");
  }
}
