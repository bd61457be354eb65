package gambrel.insight.month.value;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the settled bodies of a species were worth.
 *
 * @param species the species
 * @param month the month's bodies, least first; at least one
 * @param before those of the twelve months before, at the month's values
 */
public record WorthLine(Species species, List<BodyWorth> month, List<BodyWorth> before) {
  /** A line for each species of which the worth of a body of the month is known. */
  public static List<WorthLine> of(MonthRecords records) {
    return Stream.of(Species.values())
        .map(species -> of(records, species))
        .filter(line -> !line.month().isEmpty())
        .toList();
  }

  private static WorthLine of(MonthRecords records, Species species) {
    var values = records.rail().items();
    return new WorthLine(
        species,
        BodyWorth.of(records.bodies().settled(), species, values),
        BodyWorth.of(records.baseline().settled(), species, values));
  }
}
