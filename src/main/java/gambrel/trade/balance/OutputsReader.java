package gambrel.trade.balance;

import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Settings.Bins;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Computes the outputs of a body.
 *
 * @param weighings its weighings
 * @param batches its batches
 * @param trim its rail trim
 * @param into the weighings that make the weight into the boning room
 * @param out packs, tubs into batches and bins taken off that weight: no offal, no rail trim
 */
record OutputsReader(
    Bins bins,
    Uncertainty uncertainty,
    BodyWeighings weighings,
    List<BatchBalance> batches,
    RailTrim trim,
    List<Weighing> into,
    List<Weighing> out) {

  /**
   * The outputs; empty before the first end product, and until a body that is not cut is finished.
   *
   * @param finished whether quiet hours have passed
   */
  Optional<Outputs> read(boolean finished) {
    return switch (weighings.body().outcome()) {
      case CANCELLED -> Optional.empty();
      case WHOLE -> Weighing.sum(into).filter(w -> finished).map(this::uncut);
      case CONDEMNED -> finished ? Optional.of(uncut(Weight.ZERO)) : Optional.empty();
      case CUT -> hasEndProduct() ? Optional.of(cut()) : Optional.empty();
    };
  }

  /** How the weight into the boning room divides. */
  BodyBalance.BoningSplit split() {
    String id = weighings.body().id();
    var ofBatches = ofBatches();
    var pending =
        Weight.sum(batches.stream().filter(BatchBalance::isOpen).map(b -> b.meatInOf(id)).toList());
    var tubs = total(out, w -> w.step() == Step.TUB);
    return new BodyBalance.BoningSplit(
        total(out, w -> w.step() == Step.PACK).plus(ofBatches),
        pending,
        bin(out, Kind.BONE),
        bin(out, Kind.FAT),
        bin(out, Kind.WASTE),
        tubs.minus(ofBatches).minus(pending));
  }

  /** Whether a pack or bin is there, or a finished batch; a body may go into tubs alone. */
  private boolean hasEndProduct() {
    return out.stream().anyMatch(w -> w.step() == Step.PACK || w.step() == Step.BIN)
        || batches.stream().anyMatch(batch -> !batch.isOpen());
  }

  private Outputs uncut(Weight takeHome) {
    return outputs(takeHome, Optional.empty(), Optional.empty(), List.of());
  }

  private Outputs cut() {
    var ofBatches = ofBatches();
    var home = total(Step.PACK, pack -> !weighings.isOffal(pack));
    var meat = total(Step.PACK, weighings::isMeat);
    var counted = binned() ? out : out.stream().filter(w -> w.step() != Step.BIN).toList();
    return outputs(
        home.plus(ofBatches),
        Optional.of(meat.plus(ofBatches)),
        Weighing.sum(into).map(w -> w.minus(Weighing.total(counted))),
        counted);
  }

  private Outputs outputs(
      Weight takeHome, Optional<Weight> meatHome, Optional<Weight> left, List<Weighing> counted) {
    var loss = binned() ? left : Optional.<Weight>empty();
    return new Outputs(
        takeHome,
        meatHome,
        total(Step.PACK, weighings::isOffal),
        total(Step.TUB, Weighing::inBatch),
        bin(Kind.BONE),
        bin(Kind.FAT),
        bin(Kind.WASTE),
        Weighing.total(trim.all()),
        loss,
        binned() ? Optional.empty() : left,
        loss.map(l -> uncertainty.resolutionSquared(Groups.both(into, counted))),
        loss.flatMap(l -> uncertainty.permittedSquared(into, counted)),
        batchLoss());
  }

  private Weight total(Step step, Predicate<Weighing> which) {
    return Weighing.total(weighings.of(step, which));
  }

  private static Weight total(List<Weighing> some, Predicate<Weighing> which) {
    return Weighing.total(some.stream().filter(which).toList());
  }

  /** Its parts of the finished batches. */
  private Weight ofBatches() {
    String id = weighings.body().id();
    return Weight.sum(batches.stream().map(batch -> batch.partOf(id)).toList());
  }

  /** The weight in bins of a kind; empty if the shop weighs no bins. */
  private Optional<Weight> bin(Kind kind) {
    return binned() ? Optional.of(bin(weighings.all(), kind)) : Optional.empty();
  }

  private Weight bin(List<Weighing> some, Kind kind) {
    return binned()
        ? total(some, w -> w.step() == Step.BIN && weighings.binKind(w) == kind)
        : Weight.ZERO;
  }

  private Optional<Weight> batchLoss() {
    String id = weighings.body().id();
    return batches.stream().anyMatch(BatchBalance::isOpen)
        ? Optional.empty()
        : Optional.of(
            Weight.sum(batches.stream().map(b -> b.meatInOf(id).minus(b.partOf(id))).toList()));
  }

  /** Whether the shop weighs bins. */
  private boolean binned() {
    return bins != Bins.NO;
  }
}
