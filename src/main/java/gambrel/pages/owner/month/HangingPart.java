package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.month.loss.FurtherDay;
import gambrel.insight.month.loss.Hanging;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a day on the rail costs, and what one day more takes and brings or would have to bring. */
final class HangingPart {
  private static final int DECIMALS = 2;

  private final MonthPage page;

  HangingPart(MonthPage page) {
    this.page = page;
  }

  /** What a day costs. */
  PartView hanging() {
    var table =
        new TableBuilder("hanging", "even short")
            .first("")
            .number(page.say("days_hung"))
            .counted(page.say("lost_a_day"))
            .number(page.say("surely_between"))
            .number(page.unit())
            .number(page.label("worth_a_day", page.currency()));
    page.parts().hanging().forEach(hanging -> row(table, hanging));
    var tables = table.table(page.say("hanging_explained"));
    return PartView.of(page.say("hanging"), tables, List.of());
  }

  private void row(TableBuilder table, Hanging hanging) {
    var species = hanging.species();
    var figure =
        page.report()
            .figures()
            .find(FigureName.AGEING_PCT_A_DAY, species, BodyGroup.ALL)
            .orElseThrow();
    var interval = figure.interval().orElseThrow();
    var weight = hanging.weightADay();
    table.row(
        page.species(species),
        page.between(
            page.formats().quantity(hanging.days().lower(), 0),
            page.formats().quantity(hanging.days().upper(), 0)),
        new TableBuilder.Counted(
            hundredths(figure.value().orElseThrow()), page.ofBodies(figure.bodies())),
        page.between(hundredths(interval.lower()), hundredths(interval.upper())),
        page.formats().bareWeight(Weight.of(weight), DECIMALS),
        page.money(page.records().rail().of(species, weight)));
  }

  private String hundredths(BigFraction value) {
    return page.number(value, DECIMALS);
  }

  /** One day more, a table for each owner. */
  PartView furtherDay() {
    var tables =
        Stream.of(Ownership.CUSTOMERS, Ownership.OWN)
            .flatMap(whose -> furtherDay(whose).stream())
            .toList();
    return new PartView(
        page.say("further_day"),
        "wide",
        false,
        false,
        tables,
        tables.isEmpty() ? List.of() : List.of(page.say("further_day_explained")),
        List.of());
  }

  private List<TableView> furtherDay(Ownership whose) {
    var days = page.parts().furtherDays().stream().filter(day -> day.whose() == whose).toList();
    var table =
        new TableBuilder("further", "even short")
            .first(page.owner(whose), "titled")
            .number(page.say("number"), "few")
            .number(page.say("days_hung"), "few");
    String sure = page.say("surely_between");
    ranged(table, page.say("further.lost", page.unit()), sure);
    if (whose == Ownership.OWN) {
      ranged(table, page.say("further.price", page.say("percent")), sure);
      ranged(table, page.say("further.price", page.rateUnit()), sure);
    } else {
      ranged(table, page.say("further.worth", page.currency()), sure);
      ranged(table, page.say("further.charged", page.currency()), page.say("further.middle"));
    }
    days.forEach(day -> row(table, day));
    return table.table(notes(days));
  }

  private static void ranged(TableBuilder table, String text, String between) {
    table.number(text, "one").column(between, "number", "number between");
  }

  private void row(TableBuilder table, FurtherDay day) {
    var cells = new ArrayList<Object>();
    cells.add(page.species(day.species()));
    cells.add(page.count(day.hanging().bodies().size()));
    cells.add(page.formats().quantity(day.hanging().days().median(), 1));
    int fine = Money.digits(page.records().settings().currency()) + 1;
    add(cells, day, FigureName.FURTHER_DAY_WEIGHT, this::hundredths);
    if (day.whose() == Ownership.OWN) {
      add(cells, day, FigureName.FURTHER_DAY_PRICE_RISE_PCT, this::hundredths);
      // A rise for a unit of weight is a part of the smallest coin.
      add(cells, day, FigureName.FURTHER_DAY_PRICE_RISE, value -> page.number(value, fine));
    } else {
      add(cells, day, FigureName.FURTHER_DAY_VALUE, page::major);
      add(cells, day, FigureName.FURTHER_DAY_CHARGE, page::major);
    }
    table.row(cells.toArray());
  }

  private void add(
      List<Object> cells, FurtherDay day, FigureName name, Function<BigFraction, String> text) {
    var figure = find(name, day.whose(), day.species());
    cells.add(figure.flatMap(MonthFigure::value).map(text).orElse(""));
    cells.add(
        figure
            .flatMap(MonthFigure::interval)
            .map(i -> between(i, text.apply(i.lower()), text.apply(i.upper())))
            .orElse(""));
  }

  /** Blank if all bodies are charged the same. */
  private String between(MonthFigure.Interval interval, String low, String high) {
    boolean blank = interval.kind() == MonthFigure.Interval.Kind.MIDDLE_HALF && low.equals(high);
    return blank ? "" : page.between(low, high);
  }

  private Optional<MonthFigure> find(FigureName name, Ownership whose, Species species) {
    return page.report().figures().find(name, whose, species, BodyGroup.ALL);
  }

  private List<String> notes(List<FurtherDay> days) {
    var notes = new ArrayList<String>();
    if (days.stream().anyMatch(day -> day.hanging().trend().isEmpty())) {
      notes.add(
          page.say(
              "further.few", page.count(Hanging.ENOUGH_BODIES), page.count(Hanging.ENOUGH_DAYS)));
    }
    if (days.stream().flatMap(d -> d.loss().stream()).anyMatch(r -> r.low().signum() < 0)) {
      notes.add(page.say("further.unsure"));
    }
    return notes;
  }
}
