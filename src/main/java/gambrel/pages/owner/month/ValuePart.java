package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.Products;
import gambrel.insight.month.value.BodyWorth;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.value.MarginalValue;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.WeightUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What cuts were worth at the shop's own values. */
final class ValuePart {
  private static final int MOST_NAMES = 8;
  private static final int MOST_SMALLS = 12;

  private final MonthPage page;

  ValuePart(MonthPage page) {
    this.page = page;
  }

  PartView part() {
    var tables = new ArrayList<TableView>();
    var remarks = remarks();
    boolean valued = !page.records().night().shop().values().isEmpty();
    if (valued) {
      tables.addAll(worth());
      tables.addAll(choices());
      tables.addAll(smalls(remarks));
    }
    boolean said = tables.stream().anyMatch(table -> !table.remarks().isEmpty());
    return PartView.of(page.say("value"), tables, said ? List.of() : remarks);
  }

  private List<TableView> worth() {
    var table =
        new TableBuilder("worth", "even short")
            .first("", "kinds")
            .number(page.say("number"))
            .number(page.rateUnit())
            .number(page.say("middle"))
            .number(page.say("least"), "some")
            .number(page.say("most"), "some")
            .number(page.say("before"));
    for (var line : page.parts().worths()) {
      var bodies = line.month();
      table.row(
          page.species(line.species()),
          page.count(bodies.size()),
          page.major(BodyWorth.rateOf(bodies)),
          BodyWorth.spreadOf(bodies).map(page::middleMajor).orElse(""),
          named(bodies.get(0)),
          named(bodies.get(bodies.size() - 1)),
          page.major(BodyWorth.rateOf(line.before())));
    }
    return table.table();
  }

  private String named(BodyWorth body) {
    return page.say("month.value.body", body.account().id(), page.major(body.rate()));
  }

  private List<TableView> choices() {
    var table =
        new TableBuilder("choices", "even short below")
            .first(page.say("cut_as"), "widest")
            .number(page.say("number"))
            .number(page.rateUnit())
            .number(page.say("middle"))
            .number(page.say("less_than_best"))
            .words(page.say("how_sure"), "wider");
    for (var choice : page.parts().choices()) {
      table.group(
          page.say(
              choice.perPiece() ? "month.value.piece" : "month.value.of.body",
              page.wording().cut(choice.species(), choice.piece()),
              page.kind(choice.species()),
              page.unit()));
      choice.ways().forEach(way -> way(table, choice, way));
    }
    return table.table();
  }

  private void way(TableBuilder table, CutChoice choice, CutChoice.Way way) {
    boolean best = way == choice.best();
    table.row(
        way.items().stream().map(item -> name(choice, item)).collect(Collectors.joining(", ")),
        page.count(way.bodies()),
        page.major(way.value()),
        page.middleMajor(way.spread()),
        best ? "" : page.major(choice.best().value().subtract(way.value())),
        best ? "" : page.say("month.sure." + sureness(way)));
  }

  private String name(CutChoice choice, Item item) {
    String name = page.wording().cut(choice.species(), item);
    return item.equals(choice.piece()) ? page.say("month.value.whole", name) : name;
  }

  private static String sureness(CutChoice.Way way) {
    return way.toBest().map(difference -> difference.high() < 0 ? "yes" : "chance").orElse("few");
  }

  /** The cuts of which most was packed, in their own order. */
  private List<TableView> smalls(List<String> remarks) {
    var table =
        new TableBuilder("smalls", "even below")
            .first(page.say("month.value.small." + page.unit()), "widest")
            .number(page.rateUnit())
            .number(page.say("instead_mince"))
            .number(page.say("instead_dice"))
            .number(page.say("instead_beside"))
            .words("", "wider");
    var all =
        new MarginalValue(page.records().rail().items()).of(page.records().bodies().settled());
    var shown =
        all.stream()
            .sorted(Comparator.comparing(MarginalValue.Line::packed).reversed())
            .limit(MOST_SMALLS)
            .toList();
    all.stream().filter(shown::contains).forEach(line -> small(table, line));
    return table.kept("room", 1, remarks);
  }

  private void small(TableBuilder table, MarginalValue.Line line) {
    table.row(
        page.say(
            "month.pace.piece",
            page.wording().cut(line.species(), line.cut()),
            page.kind(line.species())),
        page.major(line.value()),
        gain(line.overMince()),
        gain(line.overDice()),
        gain(line.overBeside()),
        line.beside().map(cut -> page.wording().cut(line.species(), cut)).orElse(""));
  }

  /** A hundred grams, or four ounces. */
  private String gain(Optional<BigFraction> aUnit) {
    boolean pounds = page.records().settings().unit() == WeightUnit.LB;
    var part = pounds ? BigFraction.of(1, 4) : BigFraction.of(1, 10);
    return aUnit.map(value -> page.gain(value.multiply(part))).orElse("");
  }

  private List<String> remarks() {
    var remarks = new ArrayList<String>();
    var month = page.records().bodies().settled();
    if (page.records().night().shop().values().isEmpty()) {
      return month.isEmpty() ? remarks : List.of(page.say("month.value.none"));
    }
    if (!month.isEmpty()) {
      var day = page.records().month().atEndOfMonth();
      remarks.add(page.say("month.value.read", page.formats().date(day)));
    }
    if (!page.parts().choices().isEmpty()) {
      remarks.add(page.say("month.value.choices", page.count(CutChoice.FEWEST)));
    }
    var missing = Products.unvalued(month, page.records().rail().items());
    if (!missing.isEmpty()) {
      var names = page.names(missing.stream().map(Item::name).toList(), MOST_NAMES);
      remarks.add(page.say("month.value.missing", names));
    }
    return remarks;
  }
}
