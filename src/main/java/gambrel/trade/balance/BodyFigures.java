package gambrel.trade.balance;

import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The figures of one body, computed once by {@link BodyReader}. Names follow the columns of {@code
 * bodies.csv}.
 *
 * @param weights its weights from live to the boning room
 * @param outputs the weights that left it, and its loss; empty before the first end product
 * @param boningSplit how W divides; empty before the first end product, and for a body that is not
 *     cut
 * @param shares figures as parts of a whole
 * @param times when it was weighed
 */
public record BodyFigures(
    Weights weights,
    Optional<Outputs> outputs,
    Optional<BoningSplit> boningSplit,
    Shares shares,
    Times times) {

  /**
   * How the weight into the boning room (W) of a body that was cut divides. Offal and rail trim are
   * left out. Together with the cutting loss, or with what was not weighed, the parts add up to W.
   *
   * @param home packs, and its parts of finished batches
   * @param pending meat in open batches
   * @param bone bone in bins; zero if the shop weighs no bins
   * @param fat fat in bins; zero if the shop weighs no bins
   * @param waste anything else in bins; zero if the shop weighs no bins
   * @param batchLoss meat that finished batches lost
   */
  public record BoningSplit(
      Weight home, Weight pending, Weight bone, Weight fat, Weight waste, Weight batchLoss) {}

  /**
   * Weights from live to the boning room; each empty if unknown.
   *
   * @param live live weight, as the shop wrote it down, weighed or guessed
   * @param hot standing hot weight (H)
   * @param cold standing cold weight (C)
   * @param aged standing aged weight
   * @param boning weight into the boning room (W)
   * @param trimmedBeforeCold rail trim between hot and cold
   * @param trimmedAfterCold rail trim between cold and aged
   */
  public record Weights(
      Optional<Weight> live,
      Optional<Weight> hot,
      Optional<Weight> cold,
      Optional<Weight> aged,
      Optional<Weight> boning,
      Weight trimmedBeforeCold,
      Weight trimmedAfterCold) {}

  /**
   * Figures as parts of a whole; each empty if the part or the whole is unknown, or the whole is
   * zero.
   *
   * @param dressing hot, of live
   * @param chillShrink hot less cold less the rail trim before cold, of hot; empty if hot and cold
   *     cover different parts
   * @param coldOfHot cold, of hot; empty if they cover different parts
   * @param ageingShrink cold less aged less the rail trim after cold, over the parts that were
   *     aged, of the cold weight of these parts
   * @param cuttingLoss of boning
   * @param unweighed of boning
   * @param batchLoss of the tubs that went into batches
   * @param takeHomeOfHot take-home, of hot
   * @param takeHomeOfCold take-home, of cold
   * @param takeHomeOfBoning take-home, of boning
   * @param meatOfCold meat taken home, of cold
   * @param boneOfBoning bone in bins, of boning
   * @param fatOfBoning fat in bins, of boning
   */
  public record Shares(
      Optional<Share> dressing,
      Optional<Share> chillShrink,
      Optional<Share> coldOfHot,
      Optional<Share> ageingShrink,
      Optional<Share> cuttingLoss,
      Optional<Share> unweighed,
      Optional<Share> batchLoss,
      Optional<Share> takeHomeOfHot,
      Optional<Share> takeHomeOfCold,
      Optional<Share> takeHomeOfBoning,
      Optional<Share> meatOfCold,
      Optional<Share> boneOfBoning,
      Optional<Share> fatOfBoning) {

    static Shares of(Rail rail, Weights weights, Optional<Outputs> outputs) {
      var takeHome = outputs.map(Outputs::takeHome);
      var boning = weights.boning();
      var coldOfHot = Share.of(weights.cold().filter(cold -> rail.sameParts()), weights.hot());
      return new Shares(
          Share.of(weights.hot(), weights.live()),
          coldOfHot.map(cold -> chillShrink(cold, weights.trimmedBeforeCold())),
          coldOfHot,
          rail.ageing().flatMap(parts -> ageingShrink(parts, weights.trimmedAfterCold())),
          Share.of(outputs.flatMap(Outputs::cuttingLoss), boning),
          Share.of(outputs.flatMap(Outputs::unweighed), boning),
          Share.of(outputs.flatMap(Outputs::batchLoss), outputs.map(Outputs::tub)),
          Share.of(takeHome, weights.hot()),
          Share.of(takeHome, weights.cold()),
          Share.of(takeHome, boning),
          Share.of(outputs.flatMap(Outputs::meatHome), weights.cold()),
          Share.of(outputs.flatMap(Outputs::bone), boning),
          Share.of(outputs.flatMap(Outputs::fat), boning));
    }

    private static Share chillShrink(Share coldOfHot, Weight trimmed) {
      return new Share(coldOfHot.rest().part().minus(trimmed), coldOfHot.whole());
    }

    private static Optional<Share> ageingShrink(Rail.Ageing parts, Weight trimmed) {
      var lost = parts.cold().minus(parts.aged()).minus(trimmed);
      return Share.of(Optional.of(lost), Optional.of(parts.cold()));
    }
  }

  /**
   * When the body was weighed. Dates are local.
   *
   * @param firstCut date of the first cut
   * @param lastCut moment of the last cut
   * @param lastCold latest date of a cold weighing
   * @param lastAged latest date of an aged weighing
   * @param daysHung days from slaughter to the first cut; for a body that is not cut to its last
   *     rail weighing, once it is finished
   * @param hoursChilled hours from the last hot to the last cold weighing
   */
  public record Times(
      Optional<LocalDate> firstCut,
      Optional<OffsetDateTime> lastCut,
      Optional<LocalDate> lastCold,
      Optional<LocalDate> lastAged,
      Optional<Integer> daysHung,
      Optional<BigFraction> hoursChilled) {
    private static final long MILLIS_AN_HOUR = 3_600_000;

    /**
     * The times of a body.
     *
     * @param cuts its cuts, earliest first
     * @param finished whether quiet hours have passed
     */
    static Times of(BodyWeighings weighings, List<Weighing> cuts, boolean finished) {
      var cold = weighings.of(Step.COLD);
      var firstCut = cuts.stream().findFirst().map(Weighing::date);
      var end =
          weighings.body().isCut()
              ? firstCut
              : latestDate(weighings.rail()).filter(day -> finished);
      return new Times(
          firstCut,
          Weighing.last(cuts).map(Weighing::time),
          latestDate(cold),
          latestDate(weighings.of(Step.AGED)),
          weighings
              .body()
              .killed()
              .flatMap(
                  killed -> end.map(day -> Math.toIntExact(ChronoUnit.DAYS.between(killed, day)))),
          Weighing.last(weighings.of(Step.HOT))
              .flatMap(hot -> Weighing.last(cold).map(c -> hours(hot.time(), c.time()))));
    }

    private static Optional<LocalDate> latestDate(List<Weighing> weighings) {
      return weighings.stream().map(Weighing::date).max(Comparator.naturalOrder());
    }

    private static BigFraction hours(OffsetDateTime from, OffsetDateTime to) {
      return BigFraction.of(Duration.between(from, to).toMillis(), MILLIS_AN_HOUR);
    }
  }
}
