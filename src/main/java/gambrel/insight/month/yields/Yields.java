package gambrel.insight.month.yields;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.BodyValue;
import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ratio;
import gambrel.insight.month.bodies.Spread;
import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.Finding;
import gambrel.insight.month.findings.FindingKind;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.MonthChange;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.month.findings.OwnerCosts;
import gambrel.insight.month.findings.Sureness;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** The yields of a month's settled bodies, compared with the twelve months before, as figures. */
public final class Yields {
  private final MonthRecords records;
  private final List<MonthFigure> figures = new ArrayList<>();

  private Yields(MonthRecords records) {
    this.records = records;
  }

  /**
   * The figures of {@link BodyFigure#YIELDS} of every species, then of its classes if the month has
   * several, then of its boners; after them the share of every primal in the weight into the boning
   * room, by species in tree order. A figure that is unknown for all bodies has no value.
   */
  public static List<MonthFigure> of(MonthRecords records) {
    var yields = new Yields(records);
    records.settled().forEach(yields::groups);
    records.settled().forEach(yields::primals);
    return yields.figures;
  }

  /** Species of which less was taken home than of like bodies of the twelve months before. */
  public static List<Finding> findings(MonthRecords records) {
    return MonthChange.of(records, b -> b.percent(BodyFigure.TAKE_HOME), MonthBody::classAndStyle)
        .stream()
        .filter(change -> change.difference().high() < 0)
        .map(change -> finding(records, change.species(), change.difference().reversed()))
        .toList();
  }

  private static Finding finding(MonthRecords records, Species species, Difference less) {
    var bodies = MonthBody.of(species, records.bodies().settled());
    var total =
        bodies.stream()
            .map(b -> BodyValue.of(b, records.rail().items()))
            .filter(BodyValue::isEnough)
            .reduce(BodyValue::plus);
    return new Finding(
        FindingKind.YIELD,
        "",
        MonthBody.ids(bodies),
        less.evidence(
            List.of("difference", "bodies", "bodies_before"),
            Evidence::percent,
            Map.of("species", new Evidence.Kind(species))),
        OwnerCosts.costs(
            OwnerCosts.weights(bodies, body -> body.balance().cold()),
            total.map(v -> less.times(v.value().divide(v.valued())).divide(100)),
            records.settings().currency()),
        Sureness.LIKELY);
  }

  private void groups(Compared<List<MonthBody>> bodies) {
    groups(bodies, FigureGroup.By.ALL, 1, body -> Optional.of(""));
    groups(bodies, FigureGroup.By.CLASS, 2, Yields::category);
    groups(bodies, FigureGroup.By.BONER, 1, MonthBody::boner);
  }

  /** The bodies of each name, if the month has at least {@code fewest} names. */
  private void groups(
      Compared<List<MonthBody>> bodies,
      FigureGroup.By by,
      int fewest,
      Function<MonthBody, Optional<String>> name) {
    var names = bodies.month().stream().flatMap(body -> name.apply(body).stream()).distinct();
    var sorted = names.sorted().toList();
    for (var one : sorted.size() < fewest ? List.<String>of() : sorted) {
      Predicate<MonthBody> isOfOne = body -> name.apply(body).filter(one::equals).isPresent();
      var group = new FigureGroup.Like(by, one);
      group(group, bodies.map(all -> all.stream().filter(isOfOne).toList()));
    }
  }

  private static Optional<String> category(MonthBody body) {
    return Optional.of(body.body().category()).filter(category -> !category.isEmpty());
  }

  private void group(FigureGroup group, Compared<List<MonthBody>> bodies) {
    if (BodyFigure.YIELDS.stream().anyMatch(figure -> figure.of(bodies.month()).isKnown())) {
      for (var figure : BodyFigure.YIELDS) {
        add(FigureName.of(figure), group, bodies.map(all -> shares(all, b -> b.share(figure))));
      }
    }
  }

  private void primals(Compared<List<MonthBody>> bodies) {
    for (var item : records.night().shop().cuts().of(bodies.species()).items()) {
      if (bodies.month().stream().anyMatch(body -> body.primals().containsKey(item.id()))) {
        var shares =
            bodies.map(all -> shares(all, b -> Optional.ofNullable(b.primals().get(item.id()))));
        add(FigureName.PRIMAL_PCT, new FigureGroup.Part(item, Optional.empty()), shares);
      }
    }
  }

  private static List<Share> shares(
      List<MonthBody> bodies, Function<MonthBody, Optional<Share>> share) {
    return bodies.stream().flatMap(body -> share.apply(body).stream()).toList();
  }

  private void add(FigureName name, FigureGroup group, Compared<List<Share>> shares) {
    var month = Ratio.sum(shares.month());
    var before = Spread.of(shares.before().stream().map(Share::percent).toList());
    figures.add(
        MonthFigure.of(name, shares.species(), group, month.bodies(), month.percent())
            .with(MonthFigure.Comparison.of(before)));
  }
}
