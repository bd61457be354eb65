package gambrel.insight.month.findings;

import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much lower a figure of the month's settled bodies is than that of the twelve months before.
 *
 * @param species the species
 * @param less before less month, in the figure's unit
 */
public record MonthChange(Species species, Difference less) {
  private static final String MONTH = "month";

  /**
   * The species of which the figure fell beyond chance.
   *
   * @param figure the figure of one body; empty if unknown
   * @param kind bodies are compared within a kind
   */
  public static Stream<MonthChange> falls(
      MonthRecords records,
      Function<MonthBody, Optional<BigFraction>> figure,
      Function<MonthBody, String> kind) {
    return records.settled().stream()
        .flatMap(
            bodies ->
                difference(bodies, figure, kind, Species.values().length).stream()
                    .filter(change -> change.high() < 0)
                    .map(change -> new MonthChange(bodies.species(), change.reversed())));
  }

  /**
   * Month less before; empty where the month or the time before has too few values.
   *
   * @param figure the figure that is compared; empty if unknown
   * @param kind figures are compared within a kind
   * @param comparisons how many comparisons share the rate of false alarms
   */
  public static <T> Optional<Difference> difference(
      Compared<List<T>> compared,
      Function<T, Optional<BigFraction>> figure,
      Function<T, String> kind,
      int comparisons) {
    var samples =
        Stream.concat(
                samples(MONTH, compared.month(), figure, kind),
                samples("before", compared.before(), figure, kind))
            .toList();
    return GroupComparison.of(samples, MONTH, comparisons);
  }

  private static <T> Stream<Sample> samples(
      String group,
      List<T> all,
      Function<T, Optional<BigFraction>> figure,
      Function<T, String> kind) {
    return all.stream()
        .flatMap(
            one ->
                figure.apply(one).stream()
                    .map(value -> new Sample("", kind.apply(one), group, value.doubleValue())));
  }
}
