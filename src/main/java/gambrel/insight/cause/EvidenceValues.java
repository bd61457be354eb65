package gambrel.insight.cause;

import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.Weighing;
import java.util.stream.Stream;

/** How weighings, tickets and weights are named in evidence. */
final class EvidenceValues {
  private final Shop shop;

  EvidenceValues(Night night) {
    shop = night.shop();
  }

  /** What was weighed, as a page names it. */
  private Value name(Weighing weighing) {
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

  /** What was weighed and what the scale showed, such as brisket 3.420 kg. */
  Phrase what(Weighing weighing) {
    var shown = weighing.shown();
    // A difference is kept with more decimals than a scale shows.
    var number = shown.scale() > Weight.OUTPUT_DECIMALS ? Tares.plain(shown) : shown;
    String key = weighing.step().isRail() ? "CAUSE.WHAT." + weighing.step() : "CAUSE.WHAT";
    return Phrase.of(key)
        .with("part", name(weighing))
        .with("weight", new Value.Shown(number, weighing.unit()));
  }

  /**
   * A ticket, or where a row without one stands.
   *
   * @param where {@code START} or {@code MIDDLE} of a sentence
   */
  static Phrase ticket(Weighing weighing, String where) {
    String kind = weighing.ticket().isEmpty() ? ".ROW" : ".TICKET";
    return Phrase.of("CAUSE." + where + kind).with("ticket", number(weighing));
  }

  /** The number of the ticket, or the place of a row without one. */
  static String number(Weighing weighing) {
    return weighing.ticket().isEmpty() ? weighing.place().toString() : weighing.ticket();
  }

  /** A weight in the shop's unit. */
  Value weight(Weight weight) {
    return new Value.Mass(weight, shop.settings().unit());
  }
}
