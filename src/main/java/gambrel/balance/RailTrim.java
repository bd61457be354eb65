package gambrel.balance;

import gambrel.measure.Weight;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What was trimmed off a body while it hung: taken out of that step's shrink, not part of the cutting
 * loss.
 *
 * @param beforeCold trimmed between the hot and the cold weight
 * @param afterCold trimmed between the cold and the aged weight
 */
public record RailTrim(List<Weighing> beforeCold, List<Weighing> afterCold) {
  /** Copies the lists. */
  public RailTrim {
    beforeCold = List.copyOf(beforeCold);
    afterCold = List.copyOf(afterCold);
  }

  /** Finds it: after the first hot time, on an earlier day than the weighing that ends the step. */
  static RailTrim of(BodyWeighings weighings, Rail rail) {
    var before = new ArrayList<Weighing>();
    var after = new ArrayList<Weighing>();
    // A shop that takes no hot weight starts to follow a body at its first cold one.
    var from = rail.hot().first().or(() -> rail.cold().first());
    var cold = rail.cold().first().map(OffsetDateTime::toLocalDate);
    var aged = endOfAgeing(rail);
    for (var weighing : weighings.cuts()) {
      if (weighing.step() == Step.BLOCK
          || from.isEmpty()
          || !weighing.time().isAfter(from.get())) {
        continue;
      }
      if (cold.filter(day -> weighing.date().isBefore(day)).isPresent()) {
        before.add(weighing);
      } else if (aged.filter(day -> weighing.date().isBefore(day)).isPresent()) {
        after.add(weighing);
      }
    }
    return new RailTrim(before, after);
  }

  private static Optional<LocalDate> endOfAgeing(Rail rail) {
    return rail.boning().weighings().stream()
        .filter(w -> w.step() == Step.AGED)
        .findFirst()
        .map(Weighing::date);
  }

  /** All of it. */
  public List<Weighing> all() {
    var all = new ArrayList<>(beforeCold);
    all.addAll(afterCold);
    return all;
  }

  /** Those of {@code weighings} that are none of it. */
  public List<Weighing> without(List<Weighing> weighings) {
    if (beforeCold.isEmpty() && afterCold.isEmpty()) {
      return weighings;
    }
    var trimmed = all().stream().map(Weighing::place).collect(Collectors.toSet());
    return weighings.stream().filter(w -> !trimmed.contains(w.place())).toList();
  }

  /** Its weight. */
  public Weight weight() {
    return total(all());
  }

  /** What left the body: a tub without a batch is only weighed on its way. */
  static Weight total(List<Weighing> weighings) {
    return Weighing.total(weighings.stream().filter(BodyWeighings::isOut).toList());
  }
}
