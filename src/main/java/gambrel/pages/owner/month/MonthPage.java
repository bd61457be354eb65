package gambrel.pages.owner.month;

import gambrel.insight.month.MonthFigures;
import gambrel.insight.month.MonthParts;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Ratio;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.pages.owner.Names;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.words.Formats;
import gambrel.pages.words.Wording;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the parts of a month's summary share: the report, and how its figures are printed. A figure
 * that is unknown is printed as an empty text.
 *
 * @param report the month
 * @param wording the shop's language
 * @param weights how weights are printed
 * @param names what bodies and customers are called
 */
record MonthPage(MonthReport report, Wording wording, WeightPrinter weights, Names names) {
  /** The middle half of fewer values is not printed. */
  private static final int FEWEST_OF_MIDDLE_HALF = 4;

  /**
   * A species' bodies of one owner.
   *
   * @param whose the owner
   * @param species the species
   */
  record OwnedSpecies(Ownership whose, Species species) {
    /** The bodies in the list that are so. */
    List<MonthBody> of(List<MonthBody> bodies) {
      return whose.of(like(bodies, species));
    }
  }

  static MonthPage of(MonthReport report, Wording wording) {
    var records = report.records();
    var bodies = records.bodies().bodies().stream().map(MonthBody::balance).toList();
    var weights = WeightPrinter.of(bodies, wording.formats(), records.settings().unit());
    return new MonthPage(report, wording, weights, new Names(records.night(), wording));
  }

  MonthRecords records() {
    return report.records();
  }

  /** The month's bodies. */
  MonthBodies month() {
    return report.records().bodies();
  }

  MonthParts parts() {
    return report.parts();
  }

  MonthFigures figures() {
    return report.figures();
  }

  /** The figure of all of an owner's bodies of a species; empty if unknown. */
  Optional<MonthFigure> figure(FigureName name, OwnedSpecies of) {
    return figures().find(name, of.whose(), of.species(), BodyGroup.ALL);
  }

  /** The bodies of a species. */
  static List<MonthBody> like(List<MonthBody> bodies, Species species) {
    return bodies.stream().filter(body -> body.body().species() == species).toList();
  }

  /**
   * Adds a row for each species of each owner, owner by owner; rows without figures are left out.
   */
  TableBuilder<OwnedSpecies> byOwner(TableBuilder<OwnedSpecies> table) {
    for (var whose : Ownership.values()) {
      var rows = Stream.of(Species.values()).map(species -> new OwnedSpecies(whose, species));
      table.group(owner(whose), table.known(rows));
    }
    return table;
  }

  Formats formats() {
    return wording.formats();
  }

  String say(String key, String... figures) {
    return wording.say(key, figures);
  }

  String species(Species species) {
    return say("species." + species.id());
  }

  String owner(Ownership whose) {
    return say("summary." + whose.id());
  }

  /** A cut and its species. */
  String cut(Species species, Item item) {
    return say("month.pace.piece", wording.cut(species, item), wording.kind(species));
  }

  /** A label and the unit of its figures. */
  String label(String key, String unit) {
    return say(key) + ", " + unit;
  }

  String unit() {
    return formats().unit();
  }

  String currency() {
    return formats().currency();
  }

  /** The unit of money for a unit of weight. */
  String rateUnit() {
    return currency() + ' ' + say("per") + ' ' + unit();
  }

  String count(long number) {
    return formats().count(number);
  }

  String number(BigFraction value, int decimals) {
    return formats().number(Exact.round(value, decimals));
  }

  /** One decimal, such as a percentage under a head with the sign. */
  String tenths(BigFraction value) {
    return formats().tenths(value);
  }

  String tenths(Optional<BigFraction> value) {
    return value.map(this::tenths).orElse("");
  }

  /** From how many bodies a figure is computed. */
  String ofBodies(long bodies) {
    return say("of_bodies") + ' ' + count(bodies);
  }

  Counted counted(Ratio ratio) {
    return counted(ratio.percent(), ratio.bodies());
  }

  Counted counted(Optional<MonthFigure> figure) {
    return figure.map(f -> counted(f.value(), f.bodies())).orElse(Counted.NONE);
  }

  Counted counted(Optional<BigFraction> value, long bodies) {
    return value.map(v -> new Counted(tenths(v), ofBodies(bodies))).orElse(Counted.NONE);
  }

  String between(String low, String high) {
    return say("shrink.between", low, high);
  }

  /** Money without its currency. */
  String money(Optional<Money> amount) {
    return amount.map(formats()::bareMoney).orElse("");
  }

  /** Money or a rate given in the major unit. */
  String major(BigFraction rate) {
    return formats().bareMoney(Money.of(rate, records().settings().currency()));
  }

  String major(Optional<BigFraction> rate) {
    return rate.map(this::major).orElse("");
  }

  /** Money or a rate given in minor units. */
  String minor(Optional<BigFraction> rate) {
    return rate.map(r -> formats().bareMoney(new Money(Exact.units(r, 0)))).orElse("");
  }

  /** The middle half of numbers, with one decimal; empty if there are few. */
  String middle(Spread spread) {
    return middle(spread, this::tenths);
  }

  /** The middle half of numbers, each printed by {@code print}; empty if there are few. */
  String middle(Spread spread, Function<BigFraction, String> print) {
    return spread.number() < FEWEST_OF_MIDDLE_HALF
        ? ""
        : say("month.range", print.apply(spread.lower()), print.apply(spread.upper()));
  }
}
