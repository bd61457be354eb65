package gambrel.pages.owner.month;

import gambrel.insight.month.MonthParts;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Ratio;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.pages.owner.WeightPrinter;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.words.Formats;
import gambrel.pages.words.Wording;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the parts of a month's summary share: the report, and how its figures are printed.
 *
 * @param report the month
 * @param wording the shop's language
 * @param places decimals of weights
 */
record MonthPage(MonthReport report, Wording wording, WeightPrinter places) {
  /** Fewer values have no middle half worth printing. */
  private static final int MIDDLE = 4;

  static MonthPage of(MonthReport report, Wording wording) {
    var bodies = report.records().bodies().bodies().stream().map(body -> body.balance()).toList();
    var unit = report.records().settings().unit();
    return new MonthPage(report, wording, WeightPrinter.of(bodies, wording.formats(), unit));
  }

  MonthRecords records() {
    return report.records();
  }

  MonthParts parts() {
    return report.parts();
  }

  Formats formats() {
    return wording.formats();
  }

  String say(String key, String... figures) {
    return wording.say(key, figures);
  }

  /** A sentence about a number of things, with that number first. */
  String counted(String key, long number) {
    return wording.count(key, number, count(number));
  }

  String species(Species species) {
    return say("species." + species.id());
  }

  /** The species in a sentence. */
  String kind(Species species) {
    return say("summary.kind." + species.id());
  }

  String owner(Ownership whose) {
    return say("summary." + whose.id());
  }

  /** A label with the unit of its figures. */
  String label(String key, String unit) {
    return say(key) + ", " + unit;
  }

  String unit() {
    return formats().unit();
  }

  String currency() {
    return formats().currency();
  }

  /** Money for a unit of weight. */
  String rateUnit() {
    return currency() + ' ' + say("per") + ' ' + unit();
  }

  private Currency money() {
    return records().settings().currency();
  }

  String count(long number) {
    return formats().count(number);
  }

  /** A number with so many decimals. */
  String number(BigFraction value, int decimals) {
    return formats().number(Exact.round(value, decimals));
  }

  /** One decimal, such as a percentage below a head that says so. */
  String tenths(BigFraction value) {
    return number(value, 1);
  }

  String tenths(Optional<BigFraction> value) {
    return value.map(this::tenths).orElse("");
  }

  String tenths(double value) {
    return tenths(Exact.ofStatistic(value));
  }

  /** Of how many bodies a figure is. */
  String ofBodies(long bodies) {
    return say("of_bodies") + ' ' + count(bodies);
  }

  Counted counted(Ratio ratio) {
    return ratio
        .percent()
        .map(p -> new Counted(tenths(p), ofBodies(ratio.bodies())))
        .orElse(Counted.NONE);
  }

  Counted counted(Optional<MonthFigure> figure) {
    return figure
        .flatMap(f -> f.value().map(v -> new Counted(tenths(v), ofBodies(f.bodies()))))
        .orElse(Counted.NONE);
  }

  /** What a figure is compared with. */
  Counted before(MonthFigure figure) {
    var before = figure.before();
    return before
        .value()
        .map(v -> new Counted(tenths(v), ofBodies(before.bodies())))
        .orElse(Counted.NONE);
  }

  /** A weight that was lost, with the decimals of its scales; empty if unknown. */
  String weight(Loss loss, Optional<MonthFigure> figure) {
    var weight = figure.flatMap(MonthFigure::value).map(Weight::of);
    return loss.isOnRail() ? places.hung(weight) : places.cut(weight);
  }

  String between(String low, String high) {
    return say("shrink.between", low, high);
  }

  /** Money without its currency; empty if unknown. */
  String money(Optional<Money> amount) {
    return amount.map(formats()::bareMoney).orElse("");
  }

  /** Money or a rate in the major unit. */
  String major(BigFraction rate) {
    return formats().bareMoney(Money.of(rate, money()));
  }

  String major(Optional<BigFraction> rate) {
    return rate.map(this::major).orElse("");
  }

  /** Money or a rate in minor units. */
  String minor(BigFraction rate) {
    return formats().bareMoney(new Money(Exact.units(rate, 0)));
  }

  String minor(Optional<BigFraction> rate) {
    return rate.map(this::minor).orElse("");
  }

  /** A difference with its sign, in the major unit. */
  String gain(BigFraction rate) {
    String text = major(rate);
    return Money.of(rate, money()).compareTo(Money.ZERO) > 0 ? "+" + text : text;
  }

  /** The middle half of rates in the major unit. */
  String middleMajor(Spread spread) {
    return spread.number() < MIDDLE ? "" : range(major(spread.lower()), major(spread.upper()));
  }

  /** The middle half of numbers with one decimal. */
  String middle(Spread spread) {
    return spread.number() < MIDDLE ? "" : range(tenths(spread.lower()), tenths(spread.upper()));
  }

  private String range(String low, String high) {
    return say("month.range", low, high);
  }

  /** The first of some names, and how many more there are. */
  String names(List<String> names, int most) {
    String first = names.stream().limit(most).collect(Collectors.joining(", "));
    int more = names.size() - most;
    return more > 0 ? say("summary.more", first, count(more)) : first;
  }
}
