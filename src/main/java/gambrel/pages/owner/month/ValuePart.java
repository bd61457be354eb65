package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Products;
import gambrel.insight.month.value.CutChoice;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What cuts were worth at the shop's own values. */
record ValuePart(MonthPart.Page page) implements MonthPart {
  private static final int MOST_NAMES = 8;

  PartView part() {
    var tables = new ArrayList<TableView>();
    var remarks = remarks();
    if (!records().night().shop().values().isEmpty()) {
      tables.addAll(worth());
      tables.addAll(choices());
    }
    return PartView.of(say("value"), tables, remarks);
  }

  private List<TableView> worth() {
    // The figure of each body follows that of all, least first.
    var all = report().figures(FigureName.WORTH_OF_COLD).toList();
    return new TableBuilder<MonthFigure>("worth figures even short")
        .first("", this::species, "kinds")
        .number(say("number"), line -> count(line.bodies()))
        .number(rateUnit(), line -> major(line.value()))
        .number(say("middle"), line -> middle(line.spread(), this::major))
        .number(say("least"), line -> body(all.get(all.indexOf(line) + 1)), "some")
        .number(say("most"), line -> body(all.get(all.indexOf(line) + line.bodies())), "some")
        .number(say("before"), line -> major(line.before().value()))
        .rows(all.stream().filter(line -> line.group() == BodyGroup.ALL).toList())
        .table();
  }

  private String body(MonthFigure worth) {
    String id = ((MonthFigure.OfBody) worth.group()).body().id();
    return say("month.value.body", id, major(worth.value()));
  }

  private List<TableView> choices() {
    var table =
        new TableBuilder<MonthFigure>("choices figures even short below")
            .first(say("cut_as"), this::items, "widest")
            .number(say("number"), way -> count(way.bodies()))
            .number(rateUnit(), way -> major(way.value()))
            .number(say("middle"), way -> middle(way.spread(), this::major))
            .number(say("less_than_best"), way -> best(way).map(b -> less(way, b)).orElse(""))
            .words(say("how_sure"), way -> best(way).map(b -> sureness(way)).orElse(""), "wider");
    Groups.inOrder(ways(), this::title).forEach(table::group);
    return table.table();
  }

  /** The ways to cut each piece, best first. */
  private Stream<MonthFigure> ways() {
    return report().figures().stream()
        .filter(figure -> figure.name() != FigureName.MORE_ON_CUT)
        .filter(figure -> figure.group() instanceof MonthFigure.Way);
  }

  private static MonthFigure.Way group(MonthFigure way) {
    return (MonthFigure.Way) way.group();
  }

  /** The best way to cut the piece; empty for that way itself. */
  private Optional<MonthFigure> best(MonthFigure way) {
    var best =
        ways()
            .filter(other -> other.species().equals(way.species()))
            .filter(other -> group(other).piece().equals(group(way).piece()))
            .findFirst();
    return best.filter(other -> other != way);
  }

  private String less(MonthFigure way, MonthFigure best) {
    return major(best.value().orElseThrow().subtract(way.value().orElseThrow()));
  }

  private String title(MonthFigure way) {
    var species = way.species().orElseThrow();
    boolean perPiece = way.name() == FigureName.CUT_WORTH_OF_PIECE;
    return say(
        perPiece ? "month.value.piece" : "month.value.of.body",
        wording().cut(species, group(way).piece()),
        wording().kind(species),
        unit());
  }

  private String items(MonthFigure way) {
    return group(way).items().stream().map(i -> item(way, i)).collect(Collectors.joining(", "));
  }

  private String item(MonthFigure way, Item item) {
    String name = wording().cut(way.species().orElseThrow(), item);
    return item.equals(group(way).piece()) ? say("month.value.whole", name) : name;
  }

  private String sureness(MonthFigure way) {
    String sure = way.interval().map(i -> i.upper().signum() < 0 ? "yes" : "chance").orElse("few");
    return say("month.sure." + sure);
  }

  /** What 100 g or 4 oz more on the cuts packed most earns or loses, most first; by species. */
  List<String> more(int most) {
    var shown =
        report()
            .figures(FigureName.MORE_ON_CUT)
            .limit(most)
            .sorted(Comparator.comparing(line -> line.value().orElseThrow().negate()));
    return Groups.inOrder(shown, line -> line.species().orElseThrow()).entrySet().stream()
        .map(lines -> more(lines.getKey(), lines.getValue()))
        .toList();
  }

  private String more(Species species, List<MonthFigure> lines) {
    var instead = group(lines.get(0)).items().get(0);
    var tree = records().night().shop().cuts().of(species);
    var worth = records().values().of(tree, instead.id()).orElseThrow();
    var cuts =
        lines.stream()
            .map(
                line ->
                    say(
                        "month.value.body",
                        formats().inside(wording().cut(species, group(line).piece())),
                        formats().money(line.value().orElseThrow())));
    return say(
        "more." + unit(),
        formats().inside(wording().cut(species, instead)),
        say("number.rate", formats().money(worth), unit()),
        cuts.collect(Collectors.joining(", ")));
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
    if (ways().findAny().isPresent()) {
      remarks.add(say("month.value.choices", count(CutChoice.FEWEST)));
    }
    var missing = Products.unvalued(settled, records().values());
    if (!missing.isEmpty()) {
      var names = wording().names(missing.stream().map(Item::name).toList(), MOST_NAMES);
      remarks.add(say("month.value.missing", names));
    }
    return remarks;
  }
}
