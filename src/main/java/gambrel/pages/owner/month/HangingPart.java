package gambrel.pages.owner.month;

import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.loss.FurtherDay;
import gambrel.insight.month.loss.Hanging;
import gambrel.pages.owner.month.MonthPart.OwnedSpecies;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What one day more on the rail takes, and what it brings or would have to bring. */
record HangingPart(MonthPart.Page page) implements MonthPart {
  private static final int DECIMALS = 2;

  /**
   * One answer for the main species: what a day more takes off a body of each owner, and whether it
   * pays; or why that cannot be told. Empty if none hung.
   */
  List<String> answer() {
    return report().furtherDays().stream()
        .filter(day -> mainSpecies().filter(day.species()::equals).isPresent())
        .map(this::answer)
        .toList();
  }

  private String answer(FurtherDay day) {
    String species = wording().kind(day.species());
    String key = "day." + day.whose().id();
    if (day.weight().isEmpty()) {
      String bodies = count(Hanging.ENOUGH_BODIES);
      return say(key + ".few", species, bodies, count(Hanging.ENOUGH_DAYS));
    }
    var weight = day.weight().get();
    if (weight.interval().orElseThrow().lower().signum() < 0) {
      return say(key + ".unsure", species, count(weight.bodies()));
    }
    String lost = formats().weight(Weight.of(weight.value().orElseThrow()), DECIMALS);
    if (day.whose() == Ownership.OWN) {
      var rise = day.priceRise().flatMap(MonthFigure::value);
      return rise.map(money -> say(key, species, lost, number(money, coin()), rateUnit()))
          .orElseGet(() -> say(key + ".unvalued", species, lost));
    }
    var worth = day.weightWorth().flatMap(MonthFigure::value).map(formats()::money);
    var charged = day.charge().map(charge -> formats().money(charge.median()));
    return worth.isPresent() && charged.isPresent()
        ? say(key, species, lost, worth.get(), charged.get())
        : say(key + ".unvalued", species, lost);
  }

  /** Decimals of a rise for a unit of weight, which is a part of the smallest coin. */
  private int coin() {
    return Money.digits(records().settings().currency()) + 1;
  }

  private String hundredths(BigFraction value) {
    return number(value, DECIMALS);
  }

  /** What one day more takes and brings, in a table for each owner. */
  PartView furtherDay() {
    var tables =
        Stream.of(Ownership.CUSTOMERS, Ownership.OWN)
            .flatMap(whose -> furtherDay(whose).stream())
            .toList();
    var remarks = tables.isEmpty() ? List.<String>of() : List.of(say("further_day_explained"));
    return PartView.of(say("further_day"), tables, remarks).with("wide");
  }

  private List<TableView> furtherDay(Ownership whose) {
    var days = report().furtherDays().stream().filter(day -> day.whose() == whose).toList();
    String sure = say("surely_between");
    var table =
        new TableBuilder<FurtherDay>("further figures even short")
            .first(owner(whose), day -> species(day.species()), "titled")
            .number(say("number"), day -> count(day.hanging().bodies().size()), "few")
            .number(
                say("days_hung"),
                day -> formats().quantity(day.hanging().days().median(), 1),
                "few");
    add(table, head("lost", unit()), sure, FigureName.FURTHER_DAY_WEIGHT, this::hundredths);
    if (whose == Ownership.OWN) {
      var rise = FigureName.FURTHER_DAY_PRICE_RISE_PCT;
      add(table, head("price", say("percent")), sure, rise, this::hundredths);
      rise = FigureName.FURTHER_DAY_PRICE_RISE;
      add(table, head("price", rateUnit()), sure, rise, value -> number(value, coin()));
    } else {
      var worth = FigureName.FURTHER_DAY_VALUE;
      add(table, head("worth", currency()), sure, worth, this::major);
      var charged = FigureName.FURTHER_DAY_CHARGE;
      add(table, head("charged", currency()), say("further.middle"), charged, this::major);
    }
    return table.rows(days).table(notes(days));
  }

  private String head(String what, String unit) {
    return say("further." + what, unit);
  }

  /** Adds a column for a figure and one for its interval. */
  private void add(
      TableBuilder<FurtherDay> table,
      String head,
      String between,
      FigureName name,
      Function<BigFraction, String> text) {
    Function<FurtherDay, Optional<MonthFigure>> figure =
        day -> figure(name, new OwnedSpecies(day.whose(), day.species()));
    table
        .number(
            head, day -> figure.apply(day).flatMap(MonthFigure::value).map(text).orElse(""), "one")
        .column(
            new Cell(between, TableBuilder.NUMBER),
            day -> {
              var interval = figure.apply(day).flatMap(MonthFigure::interval);
              var ends =
                  interval.map(i -> between(i, text.apply(i.lower()), text.apply(i.upper())));
              return List.of(new Cell(ends.orElse(""), "number between"));
            });
  }

  /** The ends of an interval; empty if all bodies are charged alike. */
  private String between(MonthFigure.Interval interval, String low, String high) {
    boolean alike = interval.kind() == MonthFigure.Interval.Kind.MIDDLE_HALF && low.equals(high);
    return alike ? "" : between(low, high);
  }

  private List<String> notes(List<FurtherDay> days) {
    var notes = new ArrayList<String>();
    if (days.stream().anyMatch(day -> day.hanging().trend().isEmpty())) {
      notes.add(say("further.few", count(Hanging.ENOUGH_BODIES), count(Hanging.ENOUGH_DAYS)));
    }
    var lost = days.stream().flatMap(day -> day.loss().stream());
    if (lost.anyMatch(loss -> loss.interval().orElseThrow().lower().signum() < 0)) {
      notes.add(say("further.unsure"));
    }
    return notes;
  }
}
