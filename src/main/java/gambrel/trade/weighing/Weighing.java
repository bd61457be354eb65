package gambrel.trade.weighing;

import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One accepted weighing.
 *
 * @param place file and line
 * @param scale the scale
 * @param ticket the scale's running number, or empty
 * @param time the moment, with the offset of the shop's zone
 * @param body the body's id, or empty
 * @param code the meaning of the code that was keyed
 * @param net net weight in the shop's unit
 * @param shown net weight as the scale showed it
 * @param unit the unit that the scale showed
 * @param pieces the number of pieces, if given
 * @param batch the batch's id, or empty
 * @param customer the one customer who gets the pack, or empty
 * @param boner the boner who cut it, or empty
 */
public record Weighing(
    Place place,
    Scale scale,
    String ticket,
    OffsetDateTime time,
    String body,
    ScaleCode code,
    Weight net,
    BigDecimal shown,
    WeightUnit unit,
    Optional<Integer> pieces,
    String batch,
    String customer,
    String boner) {

  /** Earliest first; at one time by scale, then ticket, then place. */
  public static final Comparator<Weighing> BY_TIME =
      Comparator.comparing(Weighing::time, OffsetDateTime.timeLineOrder())
          .thenComparing(w -> w.scale().id())
          .thenComparing(Weighing::ticket)
          .thenComparing(Weighing::place);

  /** The sum of the net weights. */
  public static Weight total(Collection<Weighing> weighings) {
    var total = Weight.ZERO;
    for (var weighing : weighings) {
      total = total.plus(weighing.net());
    }
    return total;
  }

  /** The sum of the net weights; empty without weighings. */
  public static Optional<Weight> sum(Collection<Weighing> weighings) {
    return weighings.isEmpty() ? Optional.empty() : Optional.of(total(weighings));
  }

  /** The last of some weighings that come earliest first; empty if there is none. */
  public static Optional<Weighing> last(List<Weighing> weighings) {
    return weighings.stream().skip(Math.max(0, weighings.size() - 1)).findFirst();
  }

  /** Those of the date of the last of some weighings that come earliest first, at least one. */
  public static List<Weighing> ofLastDay(List<Weighing> weighings) {
    var last = weighings.get(weighings.size() - 1).date();
    return weighings.stream().filter(weighing -> weighing.date().equals(last)).toList();
  }

  /** The step on the way from the rail to the box. */
  public Step step() {
    return code.step();
  }

  /** The id of the item in the cut tree, or empty. */
  public String item() {
    return code.item();
  }

  /** Its name for a release: scale and ticket, or the place if it has no ticket. */
  public String name() {
    return ticket.isEmpty() ? place.toString() : scale.id() + " " + ticket;
  }

  /** Whether a weight in the row's unit is a whole number of the scale's divisions. */
  public boolean isWhole(BigDecimal weight) {
    return unit.kilograms(weight).remainder(scale.divisionInKilograms()).signum() == 0;
  }

  /** The date in the shop's zone. */
  public LocalDate date() {
    return time.toLocalDate();
  }

  /** Whether the row names a batch; a pack of a batch is no pack of its body. */
  public boolean inBatch() {
    return !batch.isEmpty();
  }

  /** Whether it adds to its batch or is packed from it. */
  public boolean takesPartInBatch() {
    return switch (step()) {
      case TUB, ADDED, PACK -> inBatch();
      default -> false;
    };
  }

  /** Whether it counts for its body; a pack of a batch does not. */
  public boolean ofBody() {
    return !body.isEmpty() && !(step() == Step.PACK && inBatch());
  }

  /** The number of hung parts on the scale: its pieces, at least 1 and at most {@code most}. */
  public int number(int most) {
    return Math.max(1, Math.min(pieces.orElse(1), most));
  }
}
