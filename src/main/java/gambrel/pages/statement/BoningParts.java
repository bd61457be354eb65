package gambrel.pages.statement;

import gambrel.pages.views.FlowView;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Settings.Bins;
import java.util.ArrayList;
import java.util.List;

/** The parts of the weight into the boning room. They add up to it. */
final class BoningParts {
  private BoningParts() {}

  /**
   * A part.
   *
   * @param kind the kind of its bar
   * @param label key of its name
   * @param weight its weight for the whole body
   */
  record Part(FlowView.Kind kind, String label, Weight weight) {}

  static List<Part> of(StatementContext subject) {
    var split = subject.balance().figures().boningSplit().orElseThrow();
    var outputs = subject.outputs().orElseThrow();
    var parts = new ArrayList<Part>();
    parts.add(new Part(FlowView.Kind.HOME, "flow.home", split.home()));
    add(parts, FlowView.Kind.HOME, "flow.pending", split.pending());
    add(parts, FlowView.Kind.LEFT, "flow.bone", split.bone());
    add(parts, FlowView.Kind.LEFT, "flow.fat", split.fat());
    add(parts, FlowView.Kind.LEFT, "flow.waste", split.waste());
    outputs
        .unweighed()
        .ifPresent(w -> parts.add(new Part(FlowView.Kind.LOST, "flow.unweighed", w)));
    String label = subject.settings().bins() == Bins.PARTLY ? "flow.bench.partly" : "flow.bench";
    outputs.cuttingLoss().ifPresent(w -> parts.add(new Part(FlowView.Kind.LOST, label, w)));
    add(parts, FlowView.Kind.LOST, "flow.batch", split.batchLoss());
    return parts;
  }

  /** The decimals with which the parts are printed, so that they add up as printed. */
  static int decimals(StatementContext subject, List<Part> parts) {
    var least = WeightDecimals.of(subject.balance().weighings().out(), subject.settings().unit());
    return WeightDecimals.fitting(
        Math.max(least, subject.homeDecimals()), parts.stream().map(Part::weight).toList());
  }

  private static void add(List<Part> parts, FlowView.Kind kind, String label, Weight weight) {
    // Converting units can leave less than the smallest printed weight.
    if (weight.thousandths() != 0) {
      parts.add(new Part(kind, label, weight));
    }
  }
}
