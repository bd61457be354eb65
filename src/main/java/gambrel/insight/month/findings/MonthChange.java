package gambrel.insight.month.findings;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.GroupComparison.Difference;
import gambrel.insight.month.findings.GroupComparison.Sample;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How a figure of the month's settled bodies lies to that of the twelve months before, each body
 * against such as are like it.
 *
 * @param species the species
 * @param difference month less before, in the figure's unit
 */
public record MonthChange(Species species, Difference difference) {
  private static final String MONTH = "month";
  private static final String BEFORE = "before";

  /** Every species that has enough bodies to tell; alike are bodies of one {@code kind}. */
  public static List<MonthChange> of(
      MonthRecords records,
      Function<MonthBody, Optional<BigFraction>> figure,
      Function<MonthBody, String> kind) {
    var found = new ArrayList<MonthChange>();
    for (var species : Species.values()) {
      var samples = new ArrayList<Sample>();
      samples.addAll(samples(species, MONTH, records.bodies().settled(), figure, kind));
      samples.addAll(samples(species, BEFORE, records.baseline().settled(), figure, kind));
      GroupComparison.of(samples, MONTH, Species.values().length)
          .ifPresent(difference -> found.add(new MonthChange(species, difference)));
    }
    return found;
  }

  private static List<Sample> samples(
      Species species,
      String group,
      Collection<MonthBody> accounts,
      Function<MonthBody, Optional<BigFraction>> figure,
      Function<MonthBody, String> kind) {
    var samples = new ArrayList<Sample>();
    for (var account : accounts) {
      if (account.body().species() == species) {
        figure
            .apply(account)
            .map(
                value ->
                    new Sample(
                        account.body().id(), kind.apply(account), group, value.doubleValue()))
            .ifPresent(samples::add);
      }
    }
    return samples;
  }
}
