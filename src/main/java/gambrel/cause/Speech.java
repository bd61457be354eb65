package gambrel.cause;

import gambrel.measure.Exact;
import gambrel.measure.Weight;
import gambrel.reckoning.Night;
import gambrel.shop.Shop;
import gambrel.weighing.Weighing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;

/** How weighings, weights and percentages are named in evidence. */
final class Speech {
  private final Shop shop;

  Speech(Night night) {
    shop = night.shop();
  }

  /** What was weighed, as a page names it. */
  String name(Weighing weighing) {
    var body = shop.bodies().get(weighing.body());
    var trees =
        body == null ? shop.cuts().all() : List.of(shop.cuts().of(body.species()));
    return trees.stream()
        .flatMap(tree -> tree.find(weighing.item()).stream())
        .findFirst()
        .map(item -> small(item.name()))
        .orElse(weighing.code().pattern());
  }

  /** A name in the middle of a sentence. */
  static String small(String name) {
    boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
    return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
  }

  /** What was weighed and what the scale showed: {@code brisket 3.420 kg}. */
  String what(Weighing weighing) {
    String step = weighing.step().isRail() ? " " + weighing.step().id() : "";
    return name(weighing)
        + step
        + " "
        + shown(weighing.shown())
        + " "
        + weighing.unit().id();
  }

  /** A weight as a scale shows it; a difference is kept with more decimals. */
  private static String shown(BigDecimal shown) {
    return (shown.scale() > Weight.OUTPUT_DECIMALS ? Tares.plain(shown) : shown).toPlainString();
  }

  /** A ticket, or where a row without one stands. */
  static String ticket(Weighing weighing) {
    return weighing.ticket().isEmpty()
        ? "The row " + weighing.place()
        : "Ticket " + weighing.ticket();
  }

  /** A weight in the shop's unit. */
  String weight(Weight weight) {
    return weight + " " + shop.settings().unit().id();
  }

  /** A percentage with one decimal. */
  static String percent(BigFraction percent) {
    return Exact.round(percent, 1).toPlainString() + " %";
  }
}
