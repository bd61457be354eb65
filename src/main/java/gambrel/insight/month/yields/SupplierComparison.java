package gambrel.insight.month.yields;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.GroupComparison.Difference;
import gambrel.insight.month.figures.GroupComparison.Sample;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.measure.Share;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Suppliers whose bodies dress worse than bodies of the same class from other suppliers. */
public final class SupplierComparison {
  private SupplierComparison() {}

  /** The suppliers whose bodies surely dress worse, by species. */
  public static List<Finding> findings(MonthRecords records) {
    var dressed = records.with(BodyFigure.DRESSING);
    int species = (int) dressed.stream().filter(bodies -> !bodies.month().isEmpty()).count();
    return dressed.stream().flatMap(bodies -> of(records, bodies, species)).toList();
  }

  private static Stream<Finding> of(
      MonthRecords records, Compared<List<MonthBody>> bodies, int species) {
    return GroupComparison.eachAgainstTheRest(bodies.map(SupplierComparison::samples), species)
        .entrySet()
        .stream()
        .filter(of -> of.getValue().low() > 0)
        .map(of -> finding(records, bodies, of.getKey(), of.getValue()));
  }

  /** What bodies with a supplier lost in dressing, in per cent of live weight. */
  private static List<Sample> samples(List<MonthBody> bodies) {
    return bodies.stream()
        .filter(body -> !body.body().supplier().isEmpty())
        .flatMap(body -> body.share(BodyFigure.DRESSING).stream().map(hot -> sample(body, hot)))
        .toList();
  }

  private static Sample sample(MonthBody body, Share hot) {
    double lost = hot.rest().percent().doubleValue();
    return new Sample(body.body().category(), body.body().supplier(), lost);
  }

  private static Finding finding(
      MonthRecords records, Compared<List<MonthBody>> bodies, String supplier, Difference less) {
    var its = bodies.month().stream().filter(b -> b.body().supplier().equals(supplier)).toList();
    var lost = BodyFigure.DRESSING.lost(its, less.times(BigFraction.ONE));
    return Finding.likely(
        Finding.Kind.SUPPLIER,
        "others",
        MonthBody.ids(its),
        less.evidence(
            List.of("difference", "bodies", "others"),
            Evidence::percent,
            Map.of(
                "species", new Evidence.Kind(bodies.species()),
                "supplier", new Evidence.Name(supplier))),
        Finding.Cost.onRail(lost, bodies.species(), records));
  }
}
