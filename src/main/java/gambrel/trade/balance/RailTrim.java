package gambrel.trade.balance;

import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The weighings cut off a body while it hung. Rail trim is taken out of the shrink of its step and
 * does not enter the cutting loss.
 *
 * @param beforeCold trimmed between the hot and the cold weight
 * @param afterCold trimmed between the cold and the aged weight
 * @param tubs tubs without a batch, weighed in the same periods; they move no mass, so they are
 *     neither rail trim nor cuts
 */
public record RailTrim(List<Weighing> beforeCold, List<Weighing> afterCold, List<Weighing> tubs) {
  /** Copies the lists. */
  public RailTrim {
    beforeCold = List.copyOf(beforeCold);
    afterCold = List.copyOf(afterCold);
    tubs = List.copyOf(tubs);
  }

  /**
   * Cuts after the first hot time, on an earlier date than the weighing that ends the step. Where
   * only some parts were aged, what was cut from the others after the cold weight is no trim.
   */
  static RailTrim of(BodyWeighings weighings, Rail rail) {
    var before = new ArrayList<Weighing>();
    var after = new ArrayList<Weighing>();
    var tubs = new ArrayList<Weighing>();
    var tree = weighings.tree();
    // Without a hot weight the first cold one begins the time on the rail.
    var from = rail.hot().first().or(() -> rail.cold().first());
    var cold = rail.cold().first().map(OffsetDateTime::toLocalDate);
    var boning = rail.boning().weighings();
    var aged = boning.stream().filter(w -> w.step() == Step.AGED).toList();
    var end = aged.stream().findFirst().map(Weighing::date);
    var agedParts = aged.stream().map(Weighing::item).distinct().toList();
    for (var weighing : weighings.cuts()) {
      if (weighing.step() == Step.BLOCK || from.isEmpty() || !weighing.time().isAfter(from.get())) {
        continue;
      }
      boolean isBeforeCold = cold.filter(weighing.date()::isBefore).isPresent();
      boolean isBeforeAged =
          end.filter(weighing.date()::isBefore).isPresent()
              && (aged.size() == boning.size()
                  || agedParts.stream().anyMatch(p -> tree.isUnder(weighing.item(), p)));
      if (isBeforeCold || isBeforeAged) {
        var trimmed = isBeforeCold ? before : after;
        (BodyWeighings.isOut(weighing) ? trimmed : tubs).add(weighing);
      }
    }
    return new RailTrim(before, after, tubs);
  }

  /** The weight trimmed between the hot and the cold weight. */
  public Weight weightBeforeCold() {
    return Weighing.total(beforeCold);
  }

  /** The weight trimmed between the cold and the aged weight. */
  public Weight weightAfterCold() {
    return Weighing.total(afterCold);
  }

  /** All rail trim. */
  public List<Weighing> all() {
    return Groups.both(beforeCold, afterCold);
  }

  /** {@code weighings} without rail trim and without the tubs weighed while the body hung. */
  List<Weighing> without(List<Weighing> weighings) {
    var hanging = Groups.both(all(), tubs).stream().map(Weighing::place).toList();
    return weighings.stream().filter(w -> !hanging.contains(w.place())).toList();
  }
}
