package gambrel.balance;

import gambrel.cuts.Kind;
import gambrel.measure.ByteOrder;
import gambrel.measure.Weight;
import gambrel.shop.Settings;
import gambrel.shop.Settings.Bins;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Computes the figures of a body from its weighings. */
public final class BodyReader {
  private final Settings settings;
  private final Uncertainty uncertainty;
  private final HungTrees hung = new HungTrees();
  private final Map<String, BatchBalance> batches;

  /** For a shop with these settings and batches. */
  public BodyReader(Settings settings, Map<String, BatchBalance> batches) {
    this.settings = settings;
    this.uncertainty = new Uncertainty(settings.unit());
    this.batches = batches;
  }

  /** The figures of one body. */
  public BodyBalance read(BodyWeighings weighings) {
    var rail = RailReader.read(hung, weighings, settings.railOf(weighings.body().species()));
    var trim = RailTrim.of(weighings, rail);
    var blocks = new Blocks(weighings);
    boolean fromBlock = rail.isEmpty() && !weighings.of(Step.BLOCK).isEmpty();
    var into = fromBlock ? blocks.topmost() : rail.boning().weighings();
    Optional<Weight> boning = into.isEmpty() ? Optional.empty() : Optional.of(Weighing.total(into));
    var out = trim.without(weighings.outButOffal());
    return new BodyBalance(
        weighings,
        rail,
        trim,
        boning,
        into,
        fromBlock,
        outputs(weighings, trim, boning, into, out),
        blocks.balances(out, uncertainty),
        batchesOf(weighings));
  }

  private Optional<Outputs> outputs(
      BodyWeighings weighings,
      RailTrim trim,
      Optional<Weight> boning,
      List<Weighing> into,
      List<Weighing> out) {
    return switch (weighings.body().outcome()) {
      case CANCELLED -> Optional.empty();
      case WHOLE -> boning.map(w -> uncut(weighings, trim, w));
      case CONDEMNED -> boning.map(w -> uncut(weighings, trim, Weight.ZERO));
      case CUT ->
          out.stream().anyMatch(BodyReader::isEndProduct) || isPackedFromBatch(weighings)
              ? Optional.of(cut(weighings, trim, boning, into, out))
              : Optional.empty();
    };
  }

  /** A body that went into tubs alone has its first end product in a pack of a finished batch. */
  private boolean isPackedFromBatch(BodyWeighings weighings) {
    return batchesOf(weighings).stream().anyMatch(batch -> !batch.isOpen());
  }

  private static boolean isEndProduct(Weighing weighing) {
    return weighing.step() == Step.PACK || weighing.step() == Step.BIN;
  }

  private Outputs uncut(BodyWeighings weighings, RailTrim trim, Weight takeHome) {
    return outputs(weighings, trim, takeHome, Optional.empty(), Optional.empty(), List.of(), List.of());
  }

  private Outputs cut(
      BodyWeighings weighings,
      RailTrim trim,
      Optional<Weight> boning,
      List<Weighing> into,
      List<Weighing> out) {
    var batchPart =
        Weight.sum(
            batchesOf(weighings).stream().map(b -> b.partOf(weighings.body().id())).toList());
    var packs =
        weighings.of(Step.PACK).stream().filter(w -> !weighings.isOffal(w)).toList();
    var meat =
        packs.stream()
            .filter(w -> weighings.kind(w) == Kind.MEAT || weighings.kind(w) == Kind.TRIM)
            .toList();
    boolean binned = settings.bins() != Bins.NO;
    var counted = binned ? out : out.stream().filter(w -> w.step() != Step.BIN).toList();
    var left = boning.map(w -> w.minus(Weighing.total(counted)));
    return outputs(
        weighings,
        trim,
        Weighing.total(packs).plus(batchPart),
        Optional.of(Weighing.total(meat).plus(batchPart)),
        left,
        into,
        counted);
  }

  private Outputs outputs(
      BodyWeighings weighings,
      RailTrim trim,
      Weight takeHome,
      Optional<Weight> meatHome,
      Optional<Weight> left,
      List<Weighing> into,
      List<Weighing> counted) {
    boolean binned = settings.bins() != Bins.NO;
    var loss = binned ? left : Optional.<Weight>empty();
    var equation = new ArrayList<>(into);
    equation.addAll(counted);
    return new Outputs(
        takeHome,
        meatHome,
        Weighing.total(weighings.of(Step.PACK).stream().filter(weighings::isOffal).toList()),
        Weighing.total(weighings.of(Step.TUB).stream().filter(Weighing::inBatch).toList()),
        bin(weighings, Kind.BONE),
        bin(weighings, Kind.FAT),
        bin(weighings, Kind.WASTE),
        trim.weight(),
        loss,
        binned ? Optional.empty() : left,
        loss.map(l -> uncertainty.resolutionSquared(equation)),
        loss.flatMap(l -> uncertainty.permittedSquared(into, counted)),
        batchLoss(weighings));
  }

  /** What went into the bins of one kind; waste is whatever is neither bone nor fat. */
  private Optional<Weight> bin(BodyWeighings weighings, Kind kind) {
    if (settings.bins() == Bins.NO) {
      return Optional.empty();
    }
    return Optional.of(
        Weighing.total(
            weighings.of(Step.BIN).stream()
                .filter(w -> binKind(weighings.kind(w)) == kind)
                .toList()));
  }

  private static Kind binKind(Kind kind) {
    return kind == Kind.BONE || kind == Kind.FAT ? kind : Kind.WASTE;
  }

  private Optional<Weight> batchLoss(BodyWeighings weighings) {
    var loss = Weight.ZERO;
    String id = weighings.body().id();
    for (var batch : batchesOf(weighings)) {
      if (batch.isOpen()) {
        return Optional.empty();
      }
      loss = loss.plus(batch.meatInByBody().get(id)).minus(batch.partOf(id));
    }
    return Optional.of(loss);
  }

  private List<BatchBalance> batchesOf(BodyWeighings weighings) {
    var ids = new TreeSet<String>(ByteOrder.IDS);
    weighings.of(Step.TUB).stream().filter(Weighing::inBatch).forEach(w -> ids.add(w.batch()));
    return ids.stream().map(batches::get).toList();
  }
}
