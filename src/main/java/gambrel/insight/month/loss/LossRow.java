package gambrel.insight.month.loss;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.Compared;
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
 * What a group of bodies lost in the month, compared with like bodies of the twelve months before.
 *
 * @param whose who bears the loss
 * @param species the species
 * @param band which bodies of the species
 * @param loss where it was lost
 * @param month the loss of the month's bodies
 * @param before the loss of the baseline's bodies
 * @param spread the losses of the baseline's bodies one by one, in per cent
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
  /** The rows of every group of which the month has a body with that loss. */
  public static List<LossRow> of(MonthRecords records) {
    var rows = new ArrayList<LossRow>();
    for (var loss : Loss.values()) {
      var month = loss.of(records.bodies());
      for (var bodies : Compared.bySpecies(month, records.baseline().of(loss))) {
        rows.addAll(of(records, loss, bodies));
      }
    }
    rows.removeIf(row -> !row.month().isKnown());
    return List.copyOf(rows);
  }

  private static List<LossRow> of(
      MonthRecords records, Loss loss, Compared<List<MonthBody>> bodies) {
    var all = Stream.concat(bodies.before().stream(), bodies.month().stream()).toList();
    var rows = new ArrayList<LossRow>();
    for (var split : Split.values()) {
      for (var band : BodyGroup.of(split, all)) {
        for (var whose : Ownership.values()) {
          var like = bodies.map(some -> whose.of(some).stream().filter(band::holds).toList());
          var ratios = like.map(loss.figure()::of);
          rows.add(
              new LossRow(
                  whose,
                  bodies.species(),
                  band,
                  loss,
                  ratios.month(),
                  ratios.before(),
                  loss.figure().spread(like.before()),
                  records.rail().of(bodies.species(), ratios.month().part().fraction())));
        }
      }
    }
    return rows;
  }
}
