package gambrel.pages.views;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Draws flows for samples: stages from 0, what goes off them end to end behind what is left. */
final class SampleFlow {

  private final String unit;
  private final BigDecimal longest;
  private final List<FlowView.Row> rows = new ArrayList<>();
  private BigDecimal at = BigDecimal.ZERO;

  SampleFlow(String unit, String longest) {
    this.unit = unit;
    this.longest = new BigDecimal(longest);
  }

  SampleFlow stage(String label, String weight) {
    at = BigDecimal.ZERO;
    rows.add(row(FlowView.Kind.STAGE, label, weight));
    at = BigDecimal.ZERO;
    return this;
  }

  /** What is left at the end, drawn below the stage that it is all of. */
  SampleFlow fromStart(FlowView.Kind kind, String label, String weight) {
    at = BigDecimal.ZERO;
    return part(kind, label, weight);
  }

  /** What went off between two stages: it lies behind what is left. */
  SampleFlow off(String label, String left, String weight) {
    at = new BigDecimal(left);
    rows.add(row(FlowView.Kind.LOST, label, weight));
    return this;
  }

  SampleFlow part(FlowView.Kind kind, String label, String weight) {
    rows.add(row(kind, label, weight));
    return this;
  }

  FlowView view(String... notes) {
    return new FlowView(rows, List.of(notes));
  }

  private FlowView.Row row(FlowView.Kind kind, String label, String weight) {
    var from = place(at);
    at = at.add(new BigDecimal(weight));
    var width = Math.max(1, place(at) - from);
    var share =
        new BigDecimal(weight).movePointRight(2).divide(longest, 1, RoundingMode.HALF_UP) + "%";
    return new FlowView.Row(
        kind, label, Math.min(from, FlowView.FULL - width), width, weight + " " + unit, share);
  }

  private int place(BigDecimal weight) {
    return weight
        .multiply(BigDecimal.valueOf(FlowView.FULL))
        .divide(longest, 0, RoundingMode.HALF_UP)
        .intValueExact();
  }
}
