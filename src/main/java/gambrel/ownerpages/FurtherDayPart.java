package gambrel.ownerpages;

import gambrel.measure.Exact;
import gambrel.measure.Money;
import gambrel.month.FurtherDay;
import gambrel.month.HangingSample;
import gambrel.month.MonthRecords;
import gambrel.month.Ownership;
import gambrel.month.Range;
import gambrel.month.Spread;
import gambrel.statement.ShrinkChapter;
import gambrel.statement.ShrinkChapter.Ranged;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** One day more on the rail: what it takes, and what it brings or would have to bring. */
final class FurtherDayPart {
  private static final int DECIMALS = 2;
  private static final Ranged NONE = new Ranged("", "");

  private final List<FurtherDay> days;
  private final Wording wording;
  private final Currency currency;

  FurtherDayPart(MonthRecords records, Wording wording) {
    this.days = FurtherDay.of(records);
    this.wording = wording;
    this.currency = records.night().shop().settings().currency();
  }

  List<ShrinkChapter.Further> groups() {
    return Stream.of(Ownership.CUSTOMERS, Ownership.OWN)
        .flatMap(whose -> group(whose).stream())
        .toList();
  }

  private Optional<ShrinkChapter.Further> group(Ownership whose) {
    var theirs = days.stream().filter(day -> day.whose() == whose).toList();
    return theirs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ShrinkChapter.Further(
                wording.say("summary." + whose.id()),
                heads(whose),
                theirs.stream().map(this::row).toList(),
                notes(theirs)));
  }

  private List<Ranged> heads(Ownership whose) {
    String unit = wording.formats().unit();
    String money = wording.formats().currency();
    String rate = money + ' ' + wording.say("per") + ' ' + unit;
    var lost = sure("further.lost", unit);
    return whose == Ownership.OWN
        ? List.of(
            lost, sure("further.price", wording.say("percent")), sure("further.price", rate))
        : List.of(
            lost,
            sure("further.worth", money),
            new Ranged(wording.say("further.charged", money), wording.say("further.middle")));
  }

  private Ranged sure(String what, String unit) {
    return new Ranged(wording.say(what, unit), wording.say("surely_between"));
  }

  private ShrinkChapter.FurtherRow row(FurtherDay day) {
    return new ShrinkChapter.FurtherRow(
        wording.say("species." + day.species().id()),
        wording.formats().count(day.sample().bodies().size()),
        wording.formats().quantity(day.sample().days().median(), 1),
        day.whose() == Ownership.OWN ? asked(day) : charged(day));
  }

  private List<Ranged> asked(FurtherDay day) {
    return List.of(
        range(day.weight(), this::decimals),
        range(day.rise(), this::decimals),
        range(day.priceRise(), this::fine));
  }

  private List<Ranged> charged(FurtherDay day) {
    return List.of(
        range(day.weight(), this::decimals),
        range(day.weightWorth(), this::money),
        day.charge()
            .map(charge -> new Ranged(minor(charge.median()), middleHalf(charge)))
            .orElse(NONE));
  }

  private Ranged range(Optional<Range> range, Function<BigFraction, String> text) {
    return range
        .map(
            r ->
                new Ranged(
                    text.apply(r.middle()), between(text.apply(r.low()), text.apply(r.high()))))
        .orElse(NONE);
  }

  /** Nothing where all are charged the same. */
  private String middleHalf(Spread charge) {
    String low = minor(charge.lower());
    String high = minor(charge.upper());
    return low.equals(high) ? "" : between(low, high);
  }

  private String between(String low, String high) {
    return wording.say("shrink.between", low, high);
  }

  private String decimals(BigFraction value) {
    return wording.formats().number(Exact.round(value, DECIMALS));
  }

  /** A rise a unit of weight is a part of the smallest coin. */
  private String fine(BigFraction value) {
    return wording.formats().number(Exact.round(value, Money.digits(currency) + 1));
  }

  private String money(BigFraction major) {
    return wording.formats().bareMoney(Money.of(major, currency));
  }

  private String minor(BigFraction minor) {
    return wording.formats().bareMoney(new Money(Exact.units(minor, 0)));
  }

  private List<String> notes(List<FurtherDay> theirs) {
    var notes = new ArrayList<String>();
    if (theirs.stream().anyMatch(day -> day.trend().isEmpty())) {
      notes.add(
          wording.say(
              "further.few",
              wording.formats().count(HangingSample.ENOUGH_BODIES),
              wording.formats().count(HangingSample.ENOUGH_DAYS)));
    }
    if (theirs.stream().flatMap(d -> d.loss().stream()).anyMatch(r -> r.low().signum() < 0)) {
      notes.add(wording.say("further.unsure"));
    }
    return notes;
  }
}
