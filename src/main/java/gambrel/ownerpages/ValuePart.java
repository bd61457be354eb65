package gambrel.ownerpages;

import gambrel.cuts.Item;
import gambrel.cuts.Species;
import gambrel.measure.WeightUnit;
import gambrel.month.MonthRecords;
import gambrel.month.Settled;
import gambrel.month.value.BodyWorth;
import gambrel.month.value.CutChoice;
import gambrel.month.value.CutChoices;
import gambrel.month.value.SmallWeights;
import gambrel.month.value.Unvalued;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.ValueChapter;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What cuts were worth at the shop's own values. */
final class ValuePart {
  private static final int MOST_NAMES = 8;
  private static final int MOST_SMALLS = 12;

  private final MonthRecords records;
  private final Wording wording;
  private final Rates rates;
  private final List<BodyAccount> month;
  private final List<BodyAccount> before;

  ValuePart(MonthRecords records, Wording wording) {
    this.records = records;
    this.wording = wording;
    this.rates = new Rates(wording, records.night().shop().settings().currency());
    this.month = Settled.of(records.bodies().cut());
    this.before = Settled.of(records.baseline().cut());
  }

  ValueChapter chapter() {
    if (records.night().shop().values().isEmpty()) {
      var hint = month.isEmpty() ? List.<String>of() : List.of(wording.say("month.value.none"));
      return new ValueChapter(List.of(), List.of(), "", List.of(), hint);
    }
    var choices = CutChoices.lately(records);
    return new ValueChapter(
        Stream.of(Species.values()).flatMap(s -> worth(s).stream()).toList(),
        choices.stream().map(this::choice).toList(),
        wording.say("month.value.small." + unit().id()),
        smalls(),
        remarks(choices));
  }

  private Optional<ValueChapter.Worth> worth(Species species) {
    var bodies = of(month, species);
    return BodyWorth.rateOf(bodies)
        .map(
            rate ->
                new ValueChapter.Worth(
                    wording.say("species." + species.id()),
                    wording.formats().count(bodies.size()),
                    rates.major(rate),
                    BodyWorth.spreadOf(bodies).map(rates::middleMajor).orElse(""),
                    named(bodies.get(0)),
                    named(bodies.get(bodies.size() - 1)),
                    BodyWorth.rateOf(of(before, species)).map(rates::major).orElse("")));
  }

  private List<BodyWorth> of(List<BodyAccount> accounts, Species species) {
    return BodyWorth.of(
        accounts.stream().filter(a -> a.body().species() == species).toList(),
        records.rail().items());
  }

  private String named(BodyWorth body) {
    return wording.say(
        "month.value.body", body.account().body().id(), rates.major(body.rate()));
  }

  private ValueChapter.Choice choice(CutChoice choice) {
    return new ValueChapter.Choice(
        wording.say(
            choice.perPiece() ? "month.value.piece" : "month.value.of.body",
            wording.cut(choice.species(), choice.piece()),
            wording.say("summary.kind." + choice.species().id()),
            unit().id()),
        choice.ways().stream().map(way -> way(choice, way)).toList());
  }

  private ValueChapter.Way way(CutChoice choice, CutChoice.Way way) {
    boolean best = way == choice.best();
    return new ValueChapter.Way(
        way.items().stream().map(item -> name(choice, item)).collect(Collectors.joining(", ")),
        wording.formats().count(way.bodies()),
        rates.major(way.value()),
        rates.middleMajor(way.spread()),
        best ? "" : rates.major(choice.best().value().subtract(way.value())),
        best ? "" : wording.say("month.sure." + sureness(way)));
  }

  private String name(CutChoice choice, Item item) {
    String name = wording.cut(choice.species(), item);
    return item.equals(choice.piece()) ? wording.say("month.value.whole", name) : name;
  }

  private static String sureness(CutChoice.Way way) {
    return way.toBest()
        .map(difference -> difference.high() < 0 ? "yes" : "chance")
        .orElse("few");
  }

  /** The cuts of which most was packed, in their own order. */
  private List<ValueChapter.SmallRow> smalls() {
    var all = new SmallWeights(records.rail().items()).of(month);
    var shown =
        all.stream()
            .sorted(Comparator.comparing(SmallWeights.Line::packed).reversed())
            .limit(MOST_SMALLS)
            .toList();
    return all.stream().filter(shown::contains).map(this::small).toList();
  }

  private ValueChapter.SmallRow small(SmallWeights.Line line) {
    return new ValueChapter.SmallRow(
        wording.say(
            "month.pace.piece",
            wording.cut(line.species(), line.cut()),
            wording.say("summary.kind." + line.species().id())),
        rates.major(line.value()),
        gain(line.overMince()),
        gain(line.overDice()),
        line.beside().map(cut -> wording.cut(line.species(), cut)).orElse(""),
        gain(line.overBeside()));
  }

  /** A hundred grams, or four ounces. */
  private String gain(Optional<BigFraction> aUnit) {
    var part = unit() == WeightUnit.LB ? BigFraction.of(1, 4) : BigFraction.of(1, 10);
    return aUnit.map(value -> rates.gain(value.multiply(part))).orElse("");
  }

  private List<String> remarks(List<CutChoice> choices) {
    var remarks = new ArrayList<String>();
    if (!month.isEmpty()) {
      remarks.add(
          wording.say(
              "month.value.read", wording.formats().date(records.month().atEndOfMonth())));
    }
    if (!choices.isEmpty()) {
      remarks.add(
          wording.say("month.value.choices", wording.formats().count(CutChoice.FEWEST)));
    }
    var missing = Unvalued.of(month, records.rail().items());
    if (!missing.isEmpty()) {
      remarks.add(wording.say("month.value.missing", names(missing)));
    }
    return remarks;
  }

  private String names(List<Item> items) {
    String shown =
        items.stream().limit(MOST_NAMES).map(Item::name).collect(Collectors.joining(", "));
    int more = items.size() - MOST_NAMES;
    return more > 0
        ? wording.say("summary.more", shown, wording.formats().count(more))
        : shown;
  }

  private WeightUnit unit() {
    return records.night().shop().settings().unit();
  }
}
