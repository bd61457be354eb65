package gambrel.insight.cause;

import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Weighing;
import java.util.stream.Stream;

/** Gathers the values that support a change, and the figures that the bodies would have with it. */
final class EvidenceText {
  private static final int MOST_BODIES = 3;

  private final RowIndex rows;
  private final BodyFacts suspect;
  private final Candidate candidate;
  private final Night then;

  /**
   * The evidence for a change.
   *
   * @param then the night with the change
   */
  EvidenceText(RowIndex rows, BodyFacts suspect, Candidate candidate, Night then) {
    this.rows = rows;
    this.suspect = suspect;
    this.candidate = candidate;
    this.then = then;
  }

  /** The evidence as a phrase of {@code LIKELY_CAUSE}. */
  Phrase phrase() {
    var first = first();
    var phrase =
        Phrase.of("LIKELY_CAUSE." + variant())
            .with("count", candidate.changes().size())
            .with("body", suspect.id())
            .with("from", first.body())
            .with("to", candidate.first().body())
            .with("rows", rows())
            .with("ticket", ticket(first, "START"))
            .with("first", ticket(first, "MIDDLE"))
            .with("what", what(first))
            .with("chill", chill(suspect))
            .with("scale", first.scale().id())
            .with("date", first.date())
            .with("unit", first.unit().id())
            .with("unitThen", candidate.first().value(Field.UNIT).orElse(""))
            .with("outcome", outcome());
    for (var value : candidate.values().entrySet()) {
      phrase = phrase.with(value.getKey(), value.getValue());
    }
    return phrase;
  }

  private Weighing first() {
    return candidate.first().weighing();
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
    var weighings = candidate.changes().stream().map(RowChange::weighing).toList();
    return weighings.size() == 1
        ? Phrase.of("CAUSE.ONE")
            .with("ticket", ticket(first(), "START"))
            .with("what", what(first()))
        : Phrase.of("CAUSE.RUN")
            .with("from", number(first()))
            .with("to", number(weighings.get(weighings.size() - 1)))
            .with("number", weighings.size())
            .with("weight", Weighing.total(weighings), rows.unit());
  }

  /**
   * A ticket, or the place of a row without one.
   *
   * @param where {@code START} or {@code MIDDLE} of a sentence
   */
  static Phrase ticket(Weighing weighing, String where) {
    String kind = weighing.ticket().isEmpty() ? ".ROW" : ".TICKET";
    return Phrase.of("CAUSE." + where + kind).with("ticket", number(weighing));
  }

  private static String number(Weighing weighing) {
    return weighing.ticket().isEmpty() ? weighing.place().toString() : weighing.ticket();
  }

  /** What was weighed and what the scale showed, such as brisket 3.420 kg. */
  private Phrase what(Weighing weighing) {
    var shown = weighing.shown();
    // A difference is kept with more decimals than a scale shows.
    var number = shown.scale() > Weight.OUTPUT_DECIMALS ? Tares.plain(shown) : shown;
    String key = weighing.step().isRail() ? "CAUSE.WHAT." + weighing.step() : "CAUSE.WHAT";
    return Phrase.of(key)
        .with("part", name(weighing))
        .with("weight", new Value.Shown(number, weighing.unit()));
  }

  /** The item weighed, of the body's species or else of any; the code if no species has it. */
  private Value name(Weighing weighing) {
    var shop = rows.night().shop();
    var body = shop.bodies().get(weighing.body());
    var trees =
        body == null ? shop.cuts().all().stream() : Stream.of(shop.cuts().of(body.species()));
    return trees
        .flatMap(
            tree ->
                tree.find(weighing.item()).stream()
                    .map(item -> (Value) new Value.Part(tree.species(), item)))
        .findFirst()
        .orElse(new Value.Text(weighing.code().pattern()));
  }

  private Phrase outcome() {
    var figures =
        Stream.concat(Stream.of(suspect.id()), candidate.bodies().stream())
            .distinct()
            .limit(MOST_BODIES)
            .map(body -> figures(rows.facts(then, body)))
            .toList();
    return Phrase.of("CAUSE.OUTCOME." + how())
        .with("to", candidate.first().body())
        .with("weight", new Weight(candidate.first().net()), rows.unit())
        .with("figures", new Value.Phrases(figures, "; "));
  }

  private String how() {
    if (candidate.first().value(Field.BODY).isPresent()) {
      return "MOVED";
    }
    if (candidate.cause() == Cause.DOUBLE_PRESS) {
      return "WITHOUT";
    }
    return candidate.changes().size() == 1 ? "WITH" : "RIGHT";
  }

  private Phrase figures(BodyFacts facts) {
    var shares = facts.balance().shares();
    boolean shrinks = candidate.changesRail() && shares.chillShrink().isPresent();
    var lost = shares.cuttingLoss();
    var key = lost.isPresent() ? shrinks ? "BOTH" : "LOSS" : shrinks ? "CHILL" : "COMPLETE";
    var figures = Phrase.of("CAUSE.FIGURES." + key).with("body", facts.id());
    if (lost.isPresent()) {
      figures = figures.with("loss", new Value.Percent(lost.get().percent()));
    }
    return shrinks ? figures.with("chill", chill(facts)) : figures;
  }

  private static Value chill(BodyFacts facts) {
    var shrink = facts.balance().shares().chillShrink();
    return shrink.isPresent() ? new Value.Percent(shrink.get().percent()) : new Value.Text("");
  }
}
