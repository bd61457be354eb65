package gambrel.insight.month.yields;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ratio;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Share;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the settled bodies of a month gave, beside those of the twelve months before, as figures.
 */
public final class Yields {
  private final MonthRecords records;
  private final List<MonthFigure> figures = new ArrayList<>();

  private Yields(MonthRecords records) {
    this.records = records;
  }

  /**
   * The figures of {@link BodyFigure#YIELDS} of every species, then of its classes if the month has
   * several, and of its boners; after them the share of every primal in the weight into the boning
   * room, by species in tree order. A figure that is known of no body of the month has no value.
   */
  public static List<MonthFigure> of(MonthRecords records) {
    var yields = new Yields(records);
    for (var species : Species.values()) {
      var month = of(records.bodies().settled(), species);
      var before = of(records.baseline().settled(), species);
      if (!month.isEmpty()) {
        yields.line(species, FigureGroup.By.ALL, "", month, before);
        yields.split(species, FigureGroup.By.CLASS, Yields::category, month, before);
        yields.split(species, FigureGroup.By.BONER, MonthBody::boner, month, before);
      }
    }
    List.of(Species.values()).forEach(yields::primals);
    return yields.figures;
  }

  private static List<MonthBody> of(List<MonthBody> bodies, Species species) {
    return bodies.stream().filter(b -> b.body().species() == species).toList();
  }

  private static Optional<String> category(MonthBody body) {
    return Optional.of(body.body().category()).filter(category -> !category.isEmpty());
  }

  private void split(
      Species species,
      FigureGroup.By by,
      Function<MonthBody, Optional<String>> name,
      List<MonthBody> month,
      List<MonthBody> before) {
    var names = month.stream().flatMap(b -> name.apply(b).stream()).distinct().sorted().toList();
    if (by == FigureGroup.By.CLASS && names.size() < 2) {
      return;
    }
    for (String one : names) {
      line(species, by, one, named(month, name, one), named(before, name, one));
    }
  }

  private static List<MonthBody> named(
      List<MonthBody> bodies, Function<MonthBody, Optional<String>> by, String name) {
    return bodies.stream().filter(b -> by.apply(b).filter(name::equals).isPresent()).toList();
  }

  private void line(
      Species species,
      FigureGroup.By by,
      String name,
      List<MonthBody> month,
      List<MonthBody> before) {
    if (BodyFigure.YIELDS.stream().anyMatch(figure -> figure.of(month).isKnown())) {
      for (var figure : BodyFigure.YIELDS) {
        var group = new FigureGroup.Like(by, name);
        add(FigureName.of(figure), species, group, figure.of(month), figure.spread(before));
      }
    }
  }

  private void primals(Species species) {
    CutTree tree = records.night().shop().cuts().of(species);
    var month = of(records.bodies().settled(), species);
    var before = of(records.baseline().settled(), species);
    for (var item : tree.items()) {
      var shares = shares(month, item);
      if (!shares.isEmpty()) {
        var group = new FigureGroup.Part(item, Optional.empty());
        var spread = Spread.ofPercent(shares(before, item));
        add(FigureName.PRIMAL_PCT, species, group, Ratio.sum(shares), spread);
      }
    }
  }

  private static List<Share> shares(Collection<MonthBody> bodies, Item primal) {
    return bodies.stream()
        .flatMap(body -> Optional.ofNullable(body.primals().get(primal.id())).stream())
        .toList();
  }

  private void add(
      FigureName name, Species species, FigureGroup group, Ratio month, Optional<Spread> before) {
    figures.add(
        MonthFigure.of(name, species, group, month.bodies(), month.percent())
            .with(MonthFigure.Comparison.of(before)));
  }
}
