package gambrel.insight.month.pace;

import gambrel.insight.month.bodies.MonthRecords;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * How fast one boner boned one kind of piece in a month.
 *
 * @param species the species
 * @param item the piece
 * @param boner who; empty for all together
 * @param month in the month
 * @param before in the twelve months before; empty where it is not known
 */
public record PaceLine(
    Species species, Item item, Optional<String> boner, Pace month, Optional<Pace> before) {

  /**
   * The pace of a month by species and piece in tree order: all together where there are several
   * boners, then each.
   */
  public static List<PaceLine> of(MonthRecords records, PaceReadings readings) {
    var lines = new ArrayList<PaceLine>();
    for (var species : Species.values()) {
      for (var item : records.night().shop().cuts().of(species).items()) {
        lines.addAll(of(species, item, readings.month(), readings.before()));
      }
    }
    return lines;
  }

  private static List<PaceLine> of(
      Species species, Item item, BoningIntervals now, BoningIntervals before) {
    var boners = new TreeSet<String>();
    now.counted().stream()
        .filter(s -> s.species() == species && s.item().equals(item.id()))
        .forEach(s -> boners.add(s.boner()));
    var who = new ArrayList<Optional<String>>();
    if (boners.size() > 1) {
      who.add(Optional.empty());
    }
    boners.forEach(boner -> who.add(Optional.of(boner)));
    var lines = new ArrayList<PaceLine>();
    for (var boner : who) {
      now.of(boner, species, item.id())
          .ifPresent(
              pace ->
                  lines.add(
                      new PaceLine(
                          species, item, boner, pace, before.of(boner, species, item.id()))));
    }
    return lines;
  }
}
