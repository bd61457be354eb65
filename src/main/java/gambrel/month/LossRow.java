package gambrel.month;

import gambrel.balance.Drawn;
import gambrel.cuts.Species;
import gambrel.measure.Money;
import gambrel.reckoning.BodyAccount;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
    Band band,
    Loss loss,
    Ratio month,
    Ratio before,
    Optional<Spread> spread,
    Optional<Money> money) {
  private static final Drawn<MonthRecords, List<LossRow>> DRAWN = new Drawn<>(LossRow::draw);

  /** Every group of which the month has a body with that loss. */
  public static List<LossRow> of(MonthRecords records) {
    return DRAWN.of(records);
  }

  private static List<LossRow> draw(MonthRecords records) {
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

  private static List<BodyAccount> like(List<BodyAccount> bodies, Species species) {
    return bodies.stream().filter(a -> a.body().species() == species).toList();
  }

  private static List<LossRow> of(
      MonthRecords records,
      Loss loss,
      Species species,
      List<BodyAccount> month,
      List<BodyAccount> before) {
    var all = Stream.concat(before.stream(), month.stream()).toList();
    var monthOf = byOwnership(month);
    var beforeOf = byOwnership(before);
    return Stream.of(Split.values())
        .flatMap(split -> Band.of(split, all).stream())
        .flatMap(
            band ->
                Stream.of(Ownership.values())
                    .map(
                        whose ->
                            row(
                                records,
                                loss,
                                species,
                                band,
                                whose,
                                of(monthOf.get(whose), band),
                                of(beforeOf.get(whose), band))))
        .filter(row -> row.month().isKnown())
        .toList();
  }

  private static Map<Ownership, List<BodyAccount>> byOwnership(List<BodyAccount> bodies) {
    var byOwnership = new EnumMap<Ownership, List<BodyAccount>>(Ownership.class);
    for (var whose : Ownership.values()) {
      byOwnership.put(whose, new ArrayList<>());
    }
    bodies.forEach(account -> byOwnership.get(Ownership.of(account)).add(account));
    return byOwnership;
  }

  private static List<BodyAccount> of(List<BodyAccount> bodies, Band band) {
    return bodies.stream().filter(band::holds).toList();
  }

  private static LossRow row(
      MonthRecords records,
      Loss loss,
      Species species,
      Band band,
      Ownership whose,
      List<BodyAccount> month,
      List<BodyAccount> before) {
    var lost = loss.of(month);
    return new LossRow(
        whose,
        species,
        band,
        loss,
        lost,
        loss.of(before),
        loss.spread(before),
        records.rail().of(species, lost.part()));
  }
}
