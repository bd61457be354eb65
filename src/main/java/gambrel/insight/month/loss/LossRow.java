package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.bodies.Ratio;
import gambrel.insight.month.bodies.Split;
import gambrel.insight.month.bodies.Spread;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What some bodies lost in the month, against bodies like them in the twelve months before.
 *
 * @param whose who bears it
 * @param species whose
 * @param band which of them
 * @param loss where it was lost
 * @param month the month's bodies
 * @param before the baseline's
 * @param spread of the baseline's bodies, per cent
 * @param money what the month's loss was worth; empty where values are missing
 */
public record LossRow(
    Ownership whose,
    Species species,
    BodyGroup band,
    Loss loss,
    Ratio month,
    Ratio before,
    Optional<Spread> spread,
    Optional<Money> money) {
  /** Every group of which the month has a body with that loss. */
  public static List<LossRow> of(MonthRecords records) {
    var rows = new ArrayList<LossRow>();
    for (var loss : Loss.values()) {
      var month = loss.of(records.bodies());
      var before = records.baseline().of(loss);
      for (var species : Species.values()) {
        rows.addAll(of(records, loss, species, like(month, species), like(before, species)));
      }
    }
    return List.copyOf(rows);
  }

  private static List<MonthBody> like(List<MonthBody> bodies, Species species) {
    return bodies.stream().filter(a -> a.body().species() == species).toList();
  }

  private static List<LossRow> of(
      MonthRecords records,
      Loss loss,
      Species species,
      List<MonthBody> month,
      List<MonthBody> before) {
    var all = Stream.concat(before.stream(), month.stream()).toList();
    var rows = new ArrayList<LossRow>();
    for (var split : Split.values()) {
      for (var band : BodyGroup.of(split, all)) {
        for (var whose : Ownership.values()) {
          rows.add(
              row(
                  records,
                  loss,
                  species,
                  band,
                  whose,
                  of(whose.of(month), band),
                  of(whose.of(before), band)));
        }
      }
    }
    rows.removeIf(row -> !row.month().isKnown());
    return rows;
  }

  private static List<MonthBody> of(List<MonthBody> bodies, BodyGroup band) {
    return bodies.stream().filter(band::holds).toList();
  }

  private static LossRow row(
      MonthRecords records,
      Loss loss,
      Species species,
      BodyGroup band,
      Ownership whose,
      List<MonthBody> month,
      List<MonthBody> before) {
    var lost = loss.figure().of(month);
    return new LossRow(
        whose,
        species,
        band,
        loss,
        lost,
        loss.figure().of(before),
        loss.figure().spread(before),
        records.rail().of(species, lost.part()));
  }
}
