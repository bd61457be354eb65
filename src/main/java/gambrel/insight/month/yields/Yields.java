package gambrel.insight.month.yields;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ratio;
import gambrel.insight.month.figures.Spread;
import gambrel.trade.measure.Share;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The yields of a month's settled bodies, compared with the twelve months before, as figures. */
public final class Yields {
  private Yields() {}

  /**
   * The figures of {@link BodyFigure#YIELDS} of every species, then of its classes if the month has
   * several, then of its boners; after them the share of every primal in the weight into the boning
   * room, by species in tree order. A figure that is unknown for all bodies has no value.
   */
  public static List<MonthFigure> of(MonthRecords records) {
    return Stream.concat(
            records.settled().stream().flatMap(Yields::groups),
            records.settled().stream().flatMap(bodies -> primals(records, bodies)))
        .toList();
  }

  private static Stream<MonthFigure> groups(Compared<List<MonthBody>> bodies) {
    return Stream.of(
            groups(bodies, MonthFigure.By.ALL, 1, body -> Optional.of("")),
            groups(bodies, MonthFigure.By.CLASS, 2, Yields::category),
            groups(bodies, MonthFigure.By.BONER, 1, MonthBody::boner))
        .flatMap(of -> of);
  }

  /** The bodies of each name, if the month has at least {@code fewest} names. */
  private static Stream<MonthFigure> groups(
      Compared<List<MonthBody>> bodies,
      MonthFigure.By by,
      int fewest,
      Function<MonthBody, Optional<String>> name) {
    var names = bodies.month().stream().flatMap(body -> name.apply(body).stream()).distinct();
    var sorted = names.sorted().toList();
    return sorted.stream()
        .filter(one -> sorted.size() >= fewest)
        .flatMap(
            one -> {
              Predicate<MonthBody> isOfOne = b -> name.apply(b).filter(one::equals).isPresent();
              var some = bodies.map(all -> all.stream().filter(isOfOne).toList());
              return group(new MonthFigure.Like(by, one), some);
            });
  }

  private static Optional<String> category(MonthBody body) {
    return Optional.of(body.body().category()).filter(category -> !category.isEmpty());
  }

  private static Stream<MonthFigure> group(
      MonthFigure.Group group, Compared<List<MonthBody>> bodies) {
    boolean known = BodyFigure.YIELDS.stream().anyMatch(f -> f.of(bodies.month()).isKnown());
    return BodyFigure.YIELDS.stream()
        .filter(figure -> known)
        .map(figure -> figure(FigureName.of(figure), group, bodies, body -> body.share(figure)));
  }

  private static Stream<MonthFigure> primals(
      MonthRecords records, Compared<List<MonthBody>> bodies) {
    return records.night().shop().cuts().of(bodies.species()).items().stream()
        .filter(item -> bodies.month().stream().anyMatch(b -> b.primals().containsKey(item.id())))
        .map(
            item ->
                figure(
                    FigureName.PRIMAL_PCT,
                    new MonthFigure.Part(item, Optional.empty()),
                    bodies,
                    body -> Optional.ofNullable(body.primals().get(item.id()))));
  }

  private static MonthFigure figure(
      FigureName name,
      MonthFigure.Group group,
      Compared<List<MonthBody>> bodies,
      Function<MonthBody, Optional<Share>> share) {
    var shares = bodies.map(all -> all.stream().flatMap(b -> share.apply(b).stream()).toList());
    var month = Ratio.sum(shares.month());
    var before = Spread.ofShares(shares.before());
    return MonthFigure.of(name, shares.species(), group, month.bodies(), month.percent())
        .with(MonthFigure.Comparison.of(before));
  }
}
