package gambrel.trade.balance;

import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A body's figures and the weighings that make them. Every list of weighings is earliest first.
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
 * @param figures its figures
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
    BodyFigures figures) {
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
    return figures.weights().hot();
  }

  /** The standing cold weight (C). */
  public Optional<Weight> cold() {
    return figures.weights().cold();
  }

  /** Whether it is heavier cold than hot, over the same parts. */
  public boolean isColdAboveHot() {
    return rail.sameParts() && cold().orElse(Weight.ZERO).compareTo(hot().orElse(Weight.ZERO)) > 0;
  }

  /** The weight into the boning room (W). */
  public Optional<Weight> boning() {
    return figures.weights().boning();
  }

  /** What left the body; empty before the first end product. */
  public Optional<Outputs> outputs() {
    return figures.outputs();
  }

  /** Its figures as parts of a whole. */
  public BodyFigures.Shares shares() {
    return figures.shares();
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
    return figures.times().lastCut();
  }

  /** Days hung: from slaughter to the first cut; for a body not cut, to its last rail weighing. */
  public Optional<Integer> daysHung() {
    return figures.times().daysHung();
  }

  /** Hours from the last hot to the last cold weighing. */
  public Optional<BigFraction> hoursChilled() {
    return figures.times().hoursChilled();
  }
}
