package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.Products;
import gambrel.insight.month.value.BodyWorth;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.value.MarginalValue;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.WeightUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What cuts were worth at the shop's own values. */
record ValuePart(MonthPage page) implements MonthPart {
  private static final int MOST_NAMES = 8;
  private static final int MOST_SMALLS = 12;

  PartView part() {
    var tables = new ArrayList<TableView>();
    var remarks = remarks();
    if (!records().night().shop().values().isEmpty()) {
      tables.addAll(worth());
      tables.addAll(choices());
      tables.addAll(smalls(remarks));
    }
    boolean said = tables.stream().anyMatch(table -> !table.remarks().isEmpty());
    return PartView.of(say("value"), tables, said ? List.of() : remarks);
  }

  private List<TableView> worth() {
    return new TableBuilder<Compared<List<BodyWorth>>>("worth figures even short")
        .first("", line -> species(line.species()))
        .head("kinds")
        .number(say("number"), line -> count(line.month().size()))
        .number(rateUnit(), line -> major(BodyWorth.rateOf(line.month())))
        .number(
            say("middle"),
            line ->
                BodyWorth.spreadOf(line.month())
                    .map(spread -> middle(spread, this::major))
                    .orElse(""))
        .number(say("least"), line -> body(line.month().get(0)))
        .head("some")
        .number(say("most"), line -> body(line.month().get(line.month().size() - 1)))
        .head("some")
        .number(say("before"), line -> major(BodyWorth.rateOf(line.before())))
        .rows(parts().worths())
        .table();
  }

  private String body(BodyWorth body) {
    return say("month.value.body", body.account().id(), major(body.rate()));
  }

  /** A way to cut a piece beside the best way. */
  private record ChosenWay(CutChoice of, CutChoice.Way way) {
    private boolean isBest() {
      return way == of.best();
    }

    private BigFraction lessThanBest() {
      return of.best().value().subtract(way.value());
    }
  }

  private List<TableView> choices() {
    var table =
        new TableBuilder<ChosenWay>("choices figures even short below")
            .first(say("cut_as"), this::items)
            .head("widest")
            .number(say("number"), row -> count(row.way().bodies()))
            .number(rateUnit(), row -> major(row.way().value()))
            .number(say("middle"), row -> middle(row.way().spread(), this::major))
            .number(say("less_than_best"), row -> row.isBest() ? "" : major(row.lessThanBest()))
            .words(say("how_sure"), row -> row.isBest() ? "" : sureness(row.way()))
            .head("wider");
    for (var choice : parts().choices()) {
      String title =
          say(
              choice.perPiece() ? "month.value.piece" : "month.value.of.body",
              wording().cut(choice.species(), choice.piece()),
              wording().kind(choice.species()),
              unit());
      table.group(title, choice.ways().stream().map(way -> new ChosenWay(choice, way)).toList());
    }
    return table.table();
  }

  private String items(ChosenWay row) {
    return row.way().items().stream()
        .map(item -> item(row.of(), item))
        .collect(Collectors.joining(", "));
  }

  private String item(CutChoice choice, Item item) {
    String name = wording().cut(choice.species(), item);
    return item.equals(choice.piece()) ? say("month.value.whole", name) : name;
  }

  private String sureness(CutChoice.Way way) {
    String sure =
        way.toBest().map(difference -> difference.high() < 0 ? "yes" : "chance").orElse("few");
    return say("month.sure." + sure);
  }

  /** What a small weight of a cut brings instead of mince or dice, for the cuts packed most. */
  private List<TableView> smalls(List<String> remarks) {
    var all = new MarginalValue(records().rail().items()).of(month().settled());
    var shown =
        all.stream()
            .sorted(Comparator.comparing(MarginalValue.Line::packed).reversed())
            .limit(MOST_SMALLS)
            .toList();
    return new TableBuilder<MarginalValue.Line>("smalls figures even below")
        .first(say("month.value.small." + unit()), line -> cut(line.species(), line.cut()))
        .head("widest")
        .number(rateUnit(), line -> major(line.value()))
        .number(say("instead_mince"), line -> gain(line.overMince()))
        .number(say("instead_dice"), line -> gain(line.overDice()))
        .number(say("instead_beside"), line -> gain(line.overBeside()))
        .words("", line -> line.beside().map(cut -> wording().cut(line.species(), cut)).orElse(""))
        .head("wider")
        .rows(all.stream().filter(shown::contains).toList())
        .kept("room", 1, remarks);
  }

  /** What 100 g or 4 oz gain, with a sign. */
  private String gain(Optional<BigFraction> aUnit) {
    boolean pounds = records().settings().unit() == WeightUnit.LB;
    var gain = aUnit.map(a -> a.multiply(pounds ? BigFraction.of(1, 4) : BigFraction.of(1, 10)));
    var currency = records().settings().currency();
    boolean plus = gain.map(g -> Money.of(g, currency).compareTo(Money.ZERO) > 0).orElse(false);
    return (plus ? "+" : "") + major(gain);
  }

  private List<String> remarks() {
    var remarks = new ArrayList<String>();
    var settled = month().settled();
    if (records().night().shop().values().isEmpty()) {
      return settled.isEmpty() ? remarks : List.of(say("month.value.none"));
    }
    if (!settled.isEmpty()) {
      var day = records().month().atEndOfMonth();
      remarks.add(say("month.value.read", formats().date(day)));
    }
    if (!parts().choices().isEmpty()) {
      remarks.add(say("month.value.choices", count(CutChoice.FEWEST)));
    }
    var missing = Products.unvalued(settled, records().rail().items());
    if (!missing.isEmpty()) {
      var names = wording().names(missing.stream().map(Item::name).toList(), MOST_NAMES);
      remarks.add(say("month.value.missing", names));
    }
    return remarks;
  }
}
