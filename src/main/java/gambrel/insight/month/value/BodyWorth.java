package gambrel.insight.month.value;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.BodyRate;
import gambrel.insight.month.figures.BodyValue;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.ItemValues;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the take-home of bodies is worth on their cold weight, at the values of one day. */
public final class BodyWorth {
  private static final Comparator<BodyRate> LEAST_FIRST =
      Comparator.comparing(BodyRate::rate).thenComparing(rate -> rate.body().id());

  private BodyWorth() {}

  /** For every species of which a worth is known: the figure of all bodies, then of each. */
  public static List<MonthFigure> figures(MonthRecords records) {
    var name = FigureName.WORTH_OF_COLD;
    var figures = new ArrayList<MonthFigure>();
    for (var bodies : records.settled()) {
      var worths = bodies.map(all -> of(all, records.rail().items()));
      var species = bodies.species();
      if (!worths.month().isEmpty()) {
        figures.add(BodyRate.figure(name, species, BodyGroup.ALL, worths.month(), worths.before()));
      }
      for (var body : worths.month()) {
        var group = new MonthFigure.OfBody(body.body());
        figures.add(MonthFigure.of(name, species, group, 1, Optional.of(body.rate())));
      }
    }
    return figures;
  }

  /** The bodies whose cold weight and value are known, least first, then by id. */
  public static List<BodyRate> of(Collection<MonthBody> bodies, ItemValues values) {
    return bodies.stream().flatMap(body -> of(body, values).stream()).sorted(LEAST_FIRST).toList();
  }

  private static Optional<BodyRate> of(MonthBody body, ItemValues values) {
    var value = BodyValue.of(body, values);
    return body.balance()
        .cold()
        .filter(cold -> !cold.isZero() && value.isEnough())
        .map(cold -> new BodyRate(body, value.value(), cold.fraction()));
  }
}
