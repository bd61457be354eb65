package gambrel.pages.owner.month;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthBodies;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.Spread;
import gambrel.pages.owner.Names;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.words.Formats;
import gambrel.pages.words.Wording;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A part of the owner's month. It reads the month's figures and prints them in the shop's language.
 * A figure that is unknown is printed as an empty text.
 */
interface MonthPart {
  /** The middle half of fewer values is not printed. */
  int FEWEST_OF_MIDDLE_HALF = 4;

  /** The month. */
  Page page();

  /**
   * The month, and how it is printed.
   *
   * @param report the month
   * @param wording the shop's language
   * @param weights how weights are printed
   * @param names what bodies and customers are called
   */
  record Page(MonthReport report, Wording wording, WeightPrinter weights, Names names) {
    static Page of(MonthReport report, Wording wording) {
      var records = report.records();
      var bodies = records.bodies().bodies().stream().map(MonthBody::balance).toList();
      var weights = WeightPrinter.of(bodies, wording.formats(), records.settings().unit());
      return new Page(report, wording, weights, new Names(records.night(), wording));
    }
  }

  default Wording wording() {
    return page().wording();
  }

  /** How weights are printed. */
  default WeightPrinter weights() {
    return page().weights();
  }

  default MonthReport report() {
    return page().report();
  }

  default MonthRecords records() {
    return report().records();
  }

  /** The month's bodies. */
  default MonthBodies month() {
    return records().bodies();
  }

  /** The species with the most bodies; of several the first. */
  default Optional<Species> mainSpecies() {
    var bodies = month().bodies();
    return Stream.of(Species.values())
        .filter(species -> !MonthBody.of(species, bodies).isEmpty())
        .min(Comparator.comparingInt(species -> -MonthBody.of(species, bodies).size()));
  }

  default Formats formats() {
    return wording().formats();
  }

  default String say(String key, String... figures) {
    return wording().say(key, figures);
  }

  default String species(Species species) {
    return say("species." + species.id());
  }

  /** The name of a figure's species. */
  default String species(MonthFigure figure) {
    return species(figure.species().orElseThrow());
  }

  default String owner(Ownership whose) {
    return say("summary." + whose.id());
  }

  /** A cut and its species. */
  default String cut(Species species, Item item) {
    return say("month.pace.piece", wording().cut(species, item), wording().kind(species));
  }

  /** A label and the unit of its figures. */
  default String label(String key, String unit) {
    return say(key) + ", " + unit;
  }

  default String unit() {
    return formats().unit();
  }

  default String currency() {
    return records().settings().currency().getSymbol(records().settings().locale());
  }

  /** The unit of money for a unit of weight. */
  default String rateUnit() {
    return currency() + ' ' + say("per") + ' ' + unit();
  }

  default String count(long number) {
    return formats().count(number);
  }

  default String number(BigFraction value, int decimals) {
    return formats().number(Exact.round(value, decimals));
  }

  /** One decimal, such as a percentage under a head with the sign. */
  default String tenths(BigFraction value) {
    return formats().tenths(value);
  }

  default String tenths(Optional<BigFraction> value) {
    return value.map(this::tenths).orElse("");
  }

  /** From how many bodies a figure is computed. */
  default String ofBodies(long bodies) {
    return say("of_bodies") + ' ' + count(bodies);
  }

  default Counted counted(Optional<MonthFigure> figure) {
    return figure.map(f -> counted(f.value(), f.bodies())).orElse(Counted.NONE);
  }

  default Counted counted(Optional<BigFraction> value, long bodies) {
    return value.map(v -> new Counted(tenths(v), ofBodies(bodies))).orElse(Counted.NONE);
  }

  /** Money without its currency. */
  default String money(Optional<Money> amount) {
    return amount.map(formats()::bareMoney).orElse("");
  }

  /** Money or a rate given in the major unit. */
  default String major(BigFraction rate) {
    return formats().bareMoney(Money.of(rate, records().settings().currency()));
  }

  default String major(Optional<BigFraction> rate) {
    return rate.map(this::major).orElse("");
  }

  /** The middle half of numbers, with one decimal; empty if there are few. */
  default String middle(Optional<Spread> spread) {
    return middle(spread, this::tenths);
  }

  /** The middle half of numbers, each printed by {@code print}; empty if there are few. */
  default String middle(Optional<Spread> spread, Function<BigFraction, String> print) {
    return spread
        .filter(s -> s.number() >= FEWEST_OF_MIDDLE_HALF)
        .map(s -> say("month.range", print.apply(s.lower()), print.apply(s.upper())))
        .orElse("");
  }
}
