package gambrel.insight.cause;

import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/** Gathers the values that support a change, and what would come of the change. */
final class EvidenceText {
  private final BodyFacts suspect;
  private final Candidate candidate;
  private final Night then;
  private final EvidenceValues speech;
  private final RowIndex traces;

  EvidenceText(RowIndex traces, BodyFacts suspect, Candidate candidate, Night then) {
    this.traces = traces;
    this.suspect = suspect;
    this.candidate = candidate;
    this.then = then;
    this.speech = new EvidenceValues(traces.night());
  }

  /** The evidence as a phrase of {@code LIKELY_CAUSE}. */
  Phrase phrase() {
    var phrase =
        Phrase.of("LIKELY_CAUSE." + variant())
            .with("count", candidate.touches().size())
            .with("body", suspect.id())
            .with("from", first().body())
            .with("to", candidate.touches().get(0).bodyThen())
            .with("rows", rows())
            .with("ticket", EvidenceValues.ticket(first(), "START"))
            .with("first", EvidenceValues.ticket(first(), "MIDDLE"))
            .with("what", speech.what(first()))
            .with("chill", chill(suspect))
            .with("scale", first().scale().id())
            .with("date", first().date())
            .with("unit", first().unit().id())
            .with("unitThen", unitThen())
            .with("outcome", outcome());
    for (var value : candidate.values().entrySet()) {
      phrase = phrase.with(value.getKey(), value.getValue());
    }
    return phrase;
  }

  private Weighing first() {
    return candidate.touches().get(0).weighing();
  }

  private String variant() {
    return switch (candidate.cause()) {
      case WRONG_BODY ->
          !candidate.estimated()
              ? "WRONG_BODY.STRAY"
              : candidate.penalty() < WrongBody.BESIDE ? "WRONG_BODY.BETWEEN" : "WRONG_BODY.BESIDE";
      case HOOK -> suspect.balance().shares().chillShrink().isPresent() ? "HOOK" : "HOOK.NO_SHRINK";
      default -> candidate.cause().name();
    };
  }

  /** One row with what it weighs, or a run of tickets with their number and sum. */
  private Phrase rows() {
    var weighings = candidate.touches().stream().map(RowChange::weighing).toList();
    return weighings.size() == 1
        ? Phrase.of("CAUSE.ONE")
            .with("ticket", EvidenceValues.ticket(first(), "START"))
            .with("what", speech.what(first()))
        : Phrase.of("CAUSE.RUN")
            .with("from", EvidenceValues.number(first()))
            .with("to", EvidenceValues.number(weighings.get(weighings.size() - 1)))
            .with("number", weighings.size())
            .with("weight", speech.weight(Weighing.total(weighings)));
  }

  private String unitThen() {
    return candidate.touches().get(0).remedy() instanceof ProposedFix.In in ? in.unit().id() : "";
  }

  private Phrase outcome() {
    var bodies = new LinkedHashSet<>(List.of(suspect.id()));
    bodies.addAll(candidate.bodies());
    var figures = new ArrayList<Phrase>();
    for (String body : bodies.stream().limit(3).toList()) {
      figures.add(figures(traces.facts(then, body)));
    }
    var touch = candidate.touches().get(0);
    String how;
    if (touch.remedy() instanceof ProposedFix.Move) {
      how = "MOVED";
    } else if (candidate.cause() == Cause.DOUBLE_PRESS) {
      how = "WITHOUT";
    } else {
      how = candidate.touches().size() == 1 ? "WITH" : "RIGHT";
    }
    long net = touch.netThen(traces.night().shop().settings().unit());
    return Phrase.of("CAUSE.OUTCOME." + how)
        .with("to", touch.bodyThen())
        .with("weight", speech.weight(new Weight(net)))
        .with("figures", new Value.Phrases(figures, "; "));
  }

  private Phrase figures(BodyFacts facts) {
    var balance = facts.balance();
    boolean rail = candidate.touches().stream().anyMatch(t -> t.weighing().step().isRail());
    boolean shrinks = rail && balance.shares().chillShrink().isPresent();
    var lost = balance.shares().cuttingLoss();
    var key = lost.isPresent() ? shrinks ? "BOTH" : "LOSS" : shrinks ? "CHILL" : "COMPLETE";
    var figures = Phrase.of("CAUSE.FIGURES." + key).with("body", facts.id());
    if (lost.isPresent()) {
      figures = figures.with("loss", new Value.Percent(lost.get().percent()));
    }
    return shrinks ? figures.with("chill", chill(facts)) : figures;
  }

  private static Value chill(BodyFacts facts) {
    return facts
        .balance()
        .shares()
        .chillShrink()
        .map(shrink -> (Value) new Value.Percent(shrink.percent()))
        .orElse(new Value.Text(""));
  }
}
