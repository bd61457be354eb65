package gambrel.wording;

import gambrel.cuts.Kind;
import gambrel.measure.Weight;
import gambrel.shop.Settings.Bins;
import gambrel.shop.Step;
import gambrel.statement.FlowView;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** What became of the weight into the boning room. The parts add up to it. */
final class BoningParts {
  private final Subject subject;
  private final List<Weighing> out;

  private BoningParts(Subject subject) {
    this.subject = subject;
    this.out = subject.balance().outOfBoning();
  }

  /**
   * A part.
   *
   * @param kind what its bar stands for
   * @param label key of what it is
   * @param weight of the whole body
   */
  record Part(FlowView.Kind kind, String label, Weight weight) {}

  static List<Part> of(Subject subject) {
    return new BoningParts(subject).parts();
  }

  /** With how many decimals the parts are printed, so that they add up as printed. */
  static int decimals(Subject subject, List<Part> parts) {
    var least = Decimals.of(subject.balance().weighings().out(), subject.settings().unit());
    return Decimals.fitting(
        Math.max(least, subject.homeDecimals()), parts.stream().map(Part::weight).toList());
  }

  private List<Part> parts() {
    var parts = new ArrayList<Part>();
    var batches = subject.balance().batches();
    var finished = batches.stream().filter(b -> !b.isOpen()).toList();
    var home = Weight.sum(finished.stream().map(b -> b.partOf(subject.body().id())).toList());
    parts.add(new Part(FlowView.Kind.HOME, "flow.home", home.plus(sum(Step.PACK))));
    var pending = Weight.sum(subject.openBatches().stream().map(BatchMeat::put).toList());
    add(parts, FlowView.Kind.HOME, "flow.pending", pending);
    var bins = subject.settings().bins();
    if (bins != Bins.NO) {
      add(parts, FlowView.Kind.LEFT, "flow.bone", bins(Kind.BONE));
      add(parts, FlowView.Kind.LEFT, "flow.fat", bins(Kind.FAT));
      add(
          parts,
          FlowView.Kind.LEFT,
          "flow.waste",
          sum(Step.BIN).minus(bins(Kind.BONE)).minus(bins(Kind.FAT)));
    }
    lost(parts, bins);
    add(parts, FlowView.Kind.LOST, "flow.batch", sum(Step.TUB).minus(home).minus(pending));
    return parts;
  }

  private void lost(List<Part> parts, Bins bins) {
    var outputs = subject.outputs().orElseThrow();
    outputs
        .unweighed()
        .ifPresent(w -> parts.add(new Part(FlowView.Kind.LOST, "flow.unweighed", w)));
    String label = bins == Bins.PARTLY ? "flow.bench.partly" : "flow.bench";
    outputs.cuttingLoss().ifPresent(w -> parts.add(new Part(FlowView.Kind.LOST, label, w)));
  }

  private static void add(List<Part> parts, FlowView.Kind kind, String label, Weight weight) {
    // Less than is printed comes of converting units, and is nothing.
    if (weight.thousandths() != 0) {
      parts.add(new Part(kind, label, weight));
    }
  }

  private Weight sum(Step step) {
    return Subject.sum(out.stream().filter(w -> w.step() == step).toList());
  }

  private Weight bins(Kind kind) {
    return Subject.sum(
        out.stream().filter(w -> w.step() == Step.BIN && subject.kind(w.item()) == kind).toList());
  }
}
