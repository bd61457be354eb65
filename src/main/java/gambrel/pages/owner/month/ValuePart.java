package gambrel.pages.owner.month;

import gambrel.insight.month.value.BodyWorth;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.value.MarginalValue;
import gambrel.insight.month.value.Products;
import gambrel.insight.month.value.WorthLine;
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
record ValuePart(MonthPage page) {
  private static final int MOST_NAMES = 8;
  private static final int MOST_SMALLS = 12;

  PartView part() {
    var tables = new ArrayList<TableView>();
    var remarks = remarks();
    if (!page.records().night().shop().values().isEmpty()) {
      tables.addAll(worth());
      tables.addAll(choices());
      tables.addAll(smalls(remarks));
    }
    boolean said = tables.stream().anyMatch(table -> !table.remarks().isEmpty());
    return PartView.of(page.say("value"), tables, said ? List.of() : remarks);
  }

  private List<TableView> worth() {
    return new TableBuilder<WorthLine>("worth figures even short")
        .first("", line -> page.species(line.species()))
        .head("kinds")
        .number(page.say("number"), line -> page.count(line.month().size()))
        .number(page.rateUnit(), line -> page.major(BodyWorth.rateOf(line.month())))
        .number(
            page.say("middle"),
            line ->
                BodyWorth.spreadOf(line.month())
                    .map(spread -> page.middle(spread, page::major))
                    .orElse(""))
        .number(page.say("least"), line -> body(line.month().get(0)))
        .head("some")
        .number(page.say("most"), line -> body(line.month().get(line.month().size() - 1)))
        .head("some")
        .number(page.say("before"), line -> page.major(BodyWorth.rateOf(line.before())))
        .rows(page.parts().worths())
        .table();
  }

  private String body(BodyWorth body) {
    return page.say("month.value.body", body.account().id(), page.major(body.rate()));
  }

  /**
   * A way to cut a piece beside the best way.
   *
   * @param of the ways of the piece
   * @param way one of them
   */
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
            .first(page.say("cut_as"), this::items)
            .head("widest")
            .number(page.say("number"), row -> page.count(row.way().bodies()))
            .number(page.rateUnit(), row -> page.major(row.way().value()))
            .number(page.say("middle"), row -> page.middle(row.way().spread(), page::major))
            .number(
                page.say("less_than_best"),
                row -> row.isBest() ? "" : page.major(row.lessThanBest()))
            .words(page.say("how_sure"), row -> row.isBest() ? "" : sureness(row.way()))
            .head("wider");
    for (var choice : page.parts().choices()) {
      String title =
          page.say(
              choice.perPiece() ? "month.value.piece" : "month.value.of.body",
              page.wording().cut(choice.species(), choice.piece()),
              page.wording().kind(choice.species()),
              page.unit());
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
    String name = page.wording().cut(choice.species(), item);
    return item.equals(choice.piece()) ? page.say("month.value.whole", name) : name;
  }

  private String sureness(CutChoice.Way way) {
    String sure =
        way.toBest().map(difference -> difference.high() < 0 ? "yes" : "chance").orElse("few");
    return page.say("month.sure." + sure);
  }

  /** What a small weight of a cut brings instead of mince or dice, for the cuts packed most. */
  private List<TableView> smalls(List<String> remarks) {
    var all = new MarginalValue(page.records().rail().items()).of(page.month().settled());
    var shown =
        all.stream()
            .sorted(Comparator.comparing(MarginalValue.Line::packed).reversed())
            .limit(MOST_SMALLS)
            .toList();
    return new TableBuilder<MarginalValue.Line>("smalls figures even below")
        .first(
            page.say("month.value.small." + page.unit()),
            line -> page.cut(line.species(), line.cut()))
        .head("widest")
        .number(page.rateUnit(), line -> page.major(line.value()))
        .number(page.say("instead_mince"), line -> gain(line.overMince()))
        .number(page.say("instead_dice"), line -> gain(line.overDice()))
        .number(page.say("instead_beside"), line -> gain(line.overBeside()))
        .words(
            "",
            line -> line.beside().map(cut -> page.wording().cut(line.species(), cut)).orElse(""))
        .head("wider")
        .rows(all.stream().filter(shown::contains).toList())
        .kept("room", 1, remarks);
  }

  /** What 100 g or 4 oz gain, with a sign. */
  private String gain(Optional<BigFraction> aUnit) {
    boolean pounds = page.records().settings().unit() == WeightUnit.LB;
    var gain = aUnit.map(a -> a.multiply(pounds ? BigFraction.of(1, 4) : BigFraction.of(1, 10)));
    var currency = page.records().settings().currency();
    boolean plus = gain.map(g -> Money.of(g, currency).compareTo(Money.ZERO) > 0).orElse(false);
    return (plus ? "+" : "") + page.major(gain);
  }

  private List<String> remarks() {
    var remarks = new ArrayList<String>();
    var settled = page.month().settled();
    if (page.records().night().shop().values().isEmpty()) {
      return settled.isEmpty() ? remarks : List.of(page.say("month.value.none"));
    }
    if (!settled.isEmpty()) {
      var day = page.records().month().atEndOfMonth();
      remarks.add(page.say("month.value.read", page.formats().date(day)));
    }
    if (!page.parts().choices().isEmpty()) {
      remarks.add(page.say("month.value.choices", page.count(CutChoice.FEWEST)));
    }
    var missing = Products.unvalued(settled, page.records().rail().items());
    if (!missing.isEmpty()) {
      var names = page.wording().names(missing.stream().map(Item::name).toList(), MOST_NAMES);
      remarks.add(page.say("month.value.missing", names));
    }
    return remarks;
  }
}
