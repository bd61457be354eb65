package gambrel.insight.month.money;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.stream.Stream;

/**
 * What customers were charged for a species.
 *
 * @param species the species
 * @param month for the settled bodies of the month, at least one
 * @param before for those of the twelve months before
 */
public record IncomeLine(Species species, Income month, Income before) {
  /** A line for each species of which something was charged in the month. */
  public static List<IncomeLine> of(MonthRecords records) {
    return Stream.of(Species.values())
        .map(species -> of(records, species))
        .filter(line -> line.month().bodies() > 0)
        .toList();
  }

  private static IncomeLine of(MonthRecords records, Species species) {
    return new IncomeLine(
        species,
        Income.of(species, records.bodies().settled()),
        Income.of(species, records.baseline().settled()));
  }
}
