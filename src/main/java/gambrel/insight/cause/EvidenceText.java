package gambrel.insight.cause;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Weighing;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Gathers the values that support a change, and the figures that the bodies would have with it.
 *
 * @param then the night with the change
 */
record EvidenceText(RowIndex rows, BodyFacts suspect, Candidate candidate, Night then) {
  private static final int MOST_BODIES = 3;

  /** The evidence as a phrase of {@code LIKELY_CAUSE}. */
  Phrase phrase() {
    var first = first();
    return candidate
        .evidence()
        .with("count", candidate.changes().size())
        .with("body", suspect.id)
        .with("from", first.body())
        .with("fromBatch", first.batch())
        .with("toBatch", candidate.first().batch())
        .with("to", candidate.first().body())
        .with("rows", changed())
        .with("ticket", ticket(first, "START"))
        .with("first", ticket(first, "MIDDLE"))
        .with("what", what(first))
        .with("chill", percent(suspect.balance.shares().chillShrink()))
        .with("scale", first.scale().id())
        .with("date", first.date())
        .with("unit", first.unit().id())
        .with("unitThen", candidate.first().value(Field.UNIT).orElse(""))
        .with("outcome", outcome());
  }

  private Weighing first() {
    return candidate.first().weighing();
  }

  /** One row with what it weighs, or a run of tickets with their number and sum. */
  private Phrase changed() {
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
    var shop = rows.night.shop();
    var body = shop.bodies().get(weighing.body());
    var trees =
        body == null ? shop.cuts().all().stream() : Stream.of(shop.cuts().of(body.species()));
    return trees
        .flatMap(tree -> item(tree, weighing.item()).stream())
        .findFirst()
        .orElse(new Value.Text(weighing.code().pattern()));
  }

  /** An item of a cut tree by its name; empty if the tree does not have it. */
  static Optional<Value> item(CutTree tree, String item) {
    return tree.find(item).map(found -> new Value.Part(tree.species(), found));
  }

  private Phrase outcome() {
    boolean batch = candidate.cause() == Cause.WRONG_BATCH;
    var bodies = Stream.concat(Stream.of(suspect.id), candidate.bodies().stream()).distinct();
    var figures =
        batch
            ? candidate.batches().stream()
                .filter(id -> then.batches().containsKey(id))
                .map(this::figures)
            : bodies.limit(MOST_BODIES).map(body -> figures(rows.facts(then, body)));
    return Phrase.of("CAUSE.OUTCOME." + how())
        .with("to", batch ? candidate.first().batch() : candidate.first().body())
        .with("weight", new Weight(candidate.first().net()), rows.unit())
        .with("figures", new Value.Phrases(figures.toList(), "; "));
  }

  private String how() {
    if (candidate.first().value(Field.BODY).isPresent() || candidate.cause() == Cause.WRONG_BATCH) {
      return "MOVED";
    }
    if (candidate.cause() == Cause.DOUBLE_PRESS) {
      return "WITHOUT";
    }
    return candidate.changes().size() == 1 ? "WITH" : "RIGHT";
  }

  /** The figures of a batch that has weighings after the change. */
  private Phrase figures(String batch) {
    return Phrase.of("CAUSE.FIGURES.BATCH")
        .with("batch", batch)
        .with("loss", percent(then.batches().get(batch).lossShare()));
  }

  private Phrase figures(BodyFacts facts) {
    var shares = facts.balance.shares();
    var loss = shares.cuttingLoss();
    boolean shrinks = candidate.changesRail() && shares.chillShrink().isPresent();
    String key = loss.isPresent() ? shrinks ? "BOTH" : "LOSS" : shrinks ? "CHILL" : "COMPLETE";
    return Phrase.of("CAUSE.FIGURES." + key)
        .with("body", facts.id)
        .with("loss", percent(loss))
        .with("chill", percent(shares.chillShrink()));
  }

  private static Value percent(Optional<Share> share) {
    return share.<Value>map(known -> new Value.Percent(known.percent())).orElse(new Value.Text(""));
  }
}
