package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Split;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Losses of like bodies against the twelve months before. */
final class AgainstPart {
  /** Fewer bodies than this are no group of their own on paper. */
  private static final int ENOUGH = 5;

  private final MonthPage page;

  AgainstPart(MonthPage page) {
    this.page = page;
  }

  PartView part() {
    var tables = new ArrayList<TableBuilder>();
    for (var whose : Ownership.values()) {
      for (var loss : Loss.values()) {
        var figures =
            page.report()
                .figures()
                .of(FigureName.percentOf(loss))
                .filter(f -> f.whose().filter(whose::equals).isPresent())
                .toList();
        if (!figures.isEmpty()) {
          tables.add(against(whose, loss, figures));
        }
      }
    }
    var views = new ArrayList<TableView>();
    for (int i = 0; i < tables.size(); i++) {
      boolean last = i == tables.size() - 1;
      views.addAll(
          last
              ? tables.get(i).kept("room little", 1, List.of(page.say("against_explained")))
              : tables.get(i).table());
    }
    return PartView.of(page.say("against"), views, List.of());
  }

  private TableBuilder against(Ownership whose, Loss loss, List<MonthFigure> figures) {
    String percent = page.say("percent");
    var table =
        new TableBuilder("against", "even")
            .first(
                page.say("shrink.group", page.owner(whose), page.say("shrink.loss." + loss.id())),
                "titled")
            .number(page.label("lost", page.unit()))
            .number(page.label("worth", page.currency()))
            .counted(page.label("lost", percent))
            .counted(page.label("before", percent))
            .number(page.say("middle_half"));
    figures.stream()
        .filter(figure -> isShown(figure, figures))
        .forEach(figure -> against(table, loss, figure));
    return table;
  }

  private void against(TableBuilder table, Loss loss, MonthFigure figure) {
    table.row(
        bodies(figure),
        page.weight(loss, same(FigureName.weightOf(loss), figure)),
        page.major(same(FigureName.valueOf(loss), figure).flatMap(MonthFigure::value)),
        page.counted(Optional.of(figure)),
        page.before(figure),
        figure
            .before()
            .spread()
            .filter(spread -> spread.number() >= ENOUGH)
            .map(s -> page.between(page.tenths(s.lower()), page.tenths(s.upper())))
            .orElse(""));
  }

  /** Another figure of the same bodies. */
  private Optional<MonthFigure> same(FigureName name, MonthFigure figure) {
    return page.report()
        .figures()
        .find(name, figure.whose().orElseThrow(), figure.species().orElseThrow(), figure.group());
  }

  /** A group of its own needs bodies in the month and before, and another group beside it. */
  private static boolean isShown(MonthFigure figure, List<MonthFigure> all) {
    var split = band(figure).split();
    if (split == Split.ALL) {
      return true;
    }
    long beside =
        all.stream()
            .filter(f -> f.species().equals(figure.species()) && band(f).split() == split)
            .filter(AgainstPart::isEnough)
            .count();
    return isEnough(figure) && beside > 1;
  }

  private static BodyGroup band(MonthFigure figure) {
    return (BodyGroup) figure.group();
  }

  private static boolean isEnough(MonthFigure figure) {
    return figure.bodies() >= ENOUGH && figure.before().bodies() >= ENOUGH;
  }

  private String bodies(MonthFigure figure) {
    String species = page.species(figure.species().orElseThrow());
    var band = band(figure);
    return band.split() == Split.ALL ? species : page.say("shrink.band", species, band(band));
  }

  private String band(BodyGroup band) {
    if (band.split() == Split.CATEGORY) {
      return page.wording().category(band.name());
    }
    var ends = new ArrayList<String>();
    band.from().map(from -> number(band.split(), from)).ifPresent(ends::add);
    band.to().map(to -> number(band.split(), last(band.split(), to))).ifPresent(ends::add);
    String ending = band.from().isEmpty() ? "below" : band.to().isEmpty() ? "above" : "between";
    return page.say("shrink.band." + band.split().id() + "." + ending, ends.toArray(String[]::new));
  }

  /** Days are whole: a band that ends before day 15 is printed as ending with day 14. */
  private static BigDecimal last(Split split, BigDecimal to) {
    return split == Split.DAYS ? to.subtract(BigDecimal.ONE) : to;
  }

  private String number(Split split, BigDecimal value) {
    return split == Split.WEIGHT
        ? page.formats().weight(Weight.of(value), 0)
        : page.formats().number(value);
  }
}
