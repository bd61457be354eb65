package gambrel.trade.balance;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body;
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
 * A body's figures, computed once by {@link BodyReader}, and the weighings that make them. Every
 * list of weighings is earliest first. Names follow the columns of {@code bodies.csv}.
 *
 * @param weighings its own weighings
 * @param rail its rail weights
 * @param trim what was trimmed while it hung
 * @param fromBlock whether the weight into the boning room is the sum of the block weighings,
 *     because the body has no rail weights
 * @param boningWeighings the weighings that make the weight into the boning room (W)
 * @param topmostBlocks block weighings of pieces with no block-weighed piece above them
 * @param cuts weighings on the block, or off it into pack, tub or bin; no offal, no rail trim
 * @param outOfBoning packs, tubs that went into batches, and bins that are taken off W: no offal,
 *     no rail trim
 * @param pieces the pieces weighed on the block
 * @param batches its batches, by id
 * @param finished whether all that is expected of it is there and quiet hours have passed
 * @param outputs the weights that left it, and its loss; empty before the first end product
 * @param boningSplit how W divides; empty before the first end product, and for a body that is not
 *     cut
 * @param shares figures as parts of a whole
 * @param times when it was weighed
 */
public record BodyBalance(
    BodyWeighings weighings,
    Rail rail,
    RailTrim trim,
    boolean fromBlock,
    List<Weighing> boningWeighings,
    List<Weighing> topmostBlocks,
    List<Weighing> cuts,
    List<Weighing> outOfBoning,
    List<PieceBalance> pieces,
    List<BatchBalance> batches,
    boolean finished,
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
   * Figures as parts of a whole; each empty if the part or the whole is unknown, or the whole is
   * zero.
   *
   * @param dressing hot, of live
   * @param chillShrink hot less cold less the rail trim before cold, of hot; empty if hot and cold
   *     cover different parts
   * @param ageingShrink cold less aged less the rail trim after cold, over the parts that were
   *     aged, of the cold weight of these parts
   * @param cuttingLoss of boning
   * @param unweighed of boning
   * @param batchLoss of the tubs that went into batches
   * @param takeHomeOfHot take-home, of hot
   * @param takeHomeOfCold take-home, of cold
   * @param takeHomeOfBoning take-home, of boning
   * @param meatOfCold meat taken home, of cold
   * @param fatOfBoning fat in bins, of boning
   */
  public record Shares(
      Optional<Share> dressing,
      Optional<Share> chillShrink,
      Optional<Share> ageingShrink,
      Optional<Share> cuttingLoss,
      Optional<Share> unweighed,
      Optional<Share> batchLoss,
      Optional<Share> takeHomeOfHot,
      Optional<Share> takeHomeOfCold,
      Optional<Share> takeHomeOfBoning,
      Optional<Share> meatOfCold,
      Optional<Share> fatOfBoning) {

    /** The shares of a body; {@code boning} is the weight into the boning room. */
    static Shares of(
        Body body, Rail rail, RailTrim trim, Optional<Weight> boning, Optional<Outputs> outputs) {
      var takeHome = outputs.map(Outputs::takeHome);
      var hot = rail.hot().weight();
      var cold = rail.cold().weight();
      var coldOfHot = Share.of(cold.filter(weight -> rail.sameParts()), hot);
      return new Shares(
          Share.of(hot, body.liveWeight()),
          coldOfHot.map(of -> chillShrink(of, trim.weightBeforeCold())),
          rail.ageing().flatMap(parts -> ageingShrink(parts, trim.weightAfterCold())),
          Share.of(outputs.flatMap(Outputs::cuttingLoss), boning),
          Share.of(outputs.flatMap(Outputs::unweighed), boning),
          Share.of(outputs.flatMap(Outputs::batchLoss), outputs.map(Outputs::tub)),
          Share.of(takeHome, hot),
          Share.of(takeHome, cold),
          Share.of(takeHome, boning),
          Share.of(outputs.flatMap(Outputs::meatHome), cold),
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

  /** The body cut last in front, of those cut at one moment the last by id; needs a last cut. */
  public static final Comparator<BodyBalance> LATEST_CUT_FIRST =
      Comparator.comparing(
              (BodyBalance balance) -> balance.lastCut().orElseThrow(),
              OffsetDateTime.timeLineOrder())
          .thenComparing(balance -> balance.body().id(), ByteOrder.IDS)
          .reversed();

  /** Copies the lists. */
  public BodyBalance {
    boningWeighings = List.copyOf(boningWeighings);
    topmostBlocks = List.copyOf(topmostBlocks);
    cuts = List.copyOf(cuts);
    outOfBoning = List.copyOf(outOfBoning);
    pieces = List.copyOf(pieces);
    batches = List.copyOf(batches);
  }

  /** The body. */
  public Body body() {
    return weighings.body();
  }

  /** The standing hot weight (H). */
  public Optional<Weight> hot() {
    return rail.hot().weight();
  }

  /** The standing cold weight (C). */
  public Optional<Weight> cold() {
    return rail.cold().weight();
  }

  /** Whether it is heavier cold than hot, over the same parts. */
  public boolean isColdAboveHot() {
    return rail.sameParts() && cold().orElse(Weight.ZERO).compareTo(hot().orElse(Weight.ZERO)) > 0;
  }

  /** The weight into the boning room (W). */
  public Optional<Weight> boning() {
    return Weighing.sum(boningWeighings);
  }

  /** Packs and tubs into batches, of W; no offal, no rail trim. Empty if W is unknown or zero. */
  public Optional<Share> packedOfBoning() {
    var packed = outOfBoning.stream().filter(w -> w.step() != Step.BIN).toList();
    return Share.of(Optional.of(Weighing.total(packed)), boning());
  }

  /** Whether it has a pack, tub or bin, offal and rail trim aside. */
  public boolean isPacked() {
    return isPacked(cuts);
  }

  static boolean isPacked(List<Weighing> cuts) {
    return cuts.stream().anyMatch(w -> w.step() != Step.BLOCK);
  }

  /** When the last cut was weighed. */
  public Optional<OffsetDateTime> lastCut() {
    return times.lastCut();
  }

  /** Days hung: from slaughter to the first cut; for a body not cut, to its last rail weighing. */
  public Optional<Integer> daysHung() {
    return times.daysHung();
  }

  /** Hours from the last hot to the last cold weighing. */
  public Optional<BigFraction> hoursChilled() {
    return times.hoursChilled();
  }
}
