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
import java.util.Optional;

/**
 * One accepted weighing.
 *
 * @param place file and line
 * @param scale the scale
 * @param ticket its running number, or empty
 * @param time when, at the shop's own offset
 * @param body the body's id, or empty
 * @param code what was keyed
 * @param net net weight in the shop's unit
 * @param shown net weight as the scale showed it
 * @param unit the unit that the scale showed
 * @param pieces pieces, if given
 * @param batch the batch, or empty
 * @param customer the customer whose pack it is outright, or empty
 * @param boner who cut it, or empty
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

  /** Earliest first; at one time by scale and ticket, so that the files' names do not matter. */
  public static final Comparator<Weighing> BY_TIME =
      Comparator.comparing(Weighing::time, OffsetDateTime.timeLineOrder())
          .thenComparing(w -> w.scale().id())
          .thenComparing(Weighing::ticket)
          .thenComparing(Weighing::place);

  /** The net weights of {@code weighings} together. */
  public static Weight total(Collection<Weighing> weighings) {
    long total = 0;
    for (var weighing : weighings) {
      total = Math.addExact(total, weighing.net().hundredThousandths());
    }
    return new Weight(total);
  }

  /** Where the thing is on its way. */
  public Step step() {
    return code.step();
  }

  /** The item of the cut tree, or empty. */
  public String item() {
    return code.item();
  }

  /** The local date. */
  public LocalDate date() {
    return time.toLocalDate();
  }

  /**
   * Whether it belongs to a batch: a pack that names one is the batch's, whatever body it names.
   */
  public boolean inBatch() {
    return !batch.isEmpty();
  }

  /** Whether it goes into its batch or comes out of it. */
  public boolean takesPartInBatch() {
    return switch (step()) {
      case TUB, ADDED, PACK -> inBatch();
      default -> false;
    };
  }

  /** Whether it is a weighing of its body: a pack of a batch is not. */
  public boolean ofBody() {
    return !body.isEmpty() && !(step() == Step.PACK && inBatch());
  }

  /** How many of a hung part it takes up: its pieces, at least one and at most {@code most}. */
  public int number(int most) {
    return Math.max(1, Math.min(pieces.orElse(1), most));
  }
}
