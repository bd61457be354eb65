package gambrel.trade.balance;

import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was cut off a body while it hung. Rail trim is taken out of the shrink of its step and is no
 * part of the cutting loss.
 *
 * @param beforeCold trimmed between the hot and the cold weight
 * @param afterCold trimmed between the cold and the aged weight
 * @param tubs tubs without a batch that were weighed in the same time: they move no mass, so they
 *     are neither rail trim nor a cut
 */
public record RailTrim(List<Weighing> beforeCold, List<Weighing> afterCold, List<Weighing> tubs) {
  /** Copies the lists. */
  public RailTrim {
    beforeCold = List.copyOf(beforeCold);
    afterCold = List.copyOf(afterCold);
    tubs = List.copyOf(tubs);
  }

  /** Finds it: after the first hot time, on an earlier day than the weighing that ends the step. */
  static RailTrim of(BodyWeighings weighings, Rail rail) {
    var before = new ArrayList<Weighing>();
    var after = new ArrayList<Weighing>();
    var tubs = new ArrayList<Weighing>();
    // A shop that takes no hot weight starts to follow a body at its first cold one.
    var from = rail.hot().first().or(() -> rail.cold().first());
    var cold = rail.cold().first().map(OffsetDateTime::toLocalDate);
    var aged = endOfAgeing(rail);
    for (var weighing : weighings.cuts()) {
      if (weighing.step() == Step.BLOCK || from.isEmpty() || !weighing.time().isAfter(from.get())) {
        continue;
      }
      boolean isBeforeCold = cold.filter(weighing.date()::isBefore).isPresent();
      if (isBeforeCold || aged.filter(weighing.date()::isBefore).isPresent()) {
        var trimmed = isBeforeCold ? before : after;
        (BodyWeighings.isOut(weighing) ? trimmed : tubs).add(weighing);
      }
    }
    return new RailTrim(before, after, tubs);
  }

  private static Optional<LocalDate> endOfAgeing(Rail rail) {
    return rail.boning().weighings().stream()
        .filter(w -> w.step() == Step.AGED)
        .findFirst()
        .map(Weighing::date);
  }

  /** All rail trim. */
  public List<Weighing> all() {
    return Stream.concat(beforeCold.stream(), afterCold.stream()).toList();
  }

  /** Those of {@code weighings} that were not made while the body hung. */
  List<Weighing> without(List<Weighing> weighings) {
    var hanging = Stream.concat(all().stream(), tubs.stream()).map(Weighing::place).toList();
    return hanging.isEmpty()
        ? weighings
        : weighings.stream().filter(w -> !hanging.contains(w.place())).toList();
  }
}
