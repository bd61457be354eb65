package gambrel.pages.statement;

import gambrel.pages.views.FlowView;
import gambrel.pages.views.FlowView.Kind;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Lays out the bars of the flow chart to scale. A stage begins at 0. A loss lies at the end of the
 * stage that it is taken from.
 */
final class FlowBars {
  private final Weight longest;
  private final List<FlowView.Row> rows = new ArrayList<>();
  private Weight at = Weight.ZERO;

  /** A chart whose longest bar is {@code longest}. */
  FlowBars(Weight longest) {
    this.longest = longest;
  }

  List<FlowView.Row> rows() {
    return rows;
  }

  /** Adds the weight of the body at a step. */
  void stage(String label, Weight weight, String text, String share) {
    add(Kind.STAGE, label, Weight.ZERO, weight, text, share);
  }

  /** Adds a loss, to the right of the weight {@code left} that remains. */
  void off(Kind kind, String label, Weight weight, String text, String share, Weight left) {
    add(kind, label, left, weight, text, share);
  }

  /** Makes the following parts begin at the left. */
  FlowBars start() {
    at = Weight.ZERO;
    return this;
  }

  /** Adds a part, to the right of the one before. */
  void part(Kind kind, String label, Weight weight, String text, String share) {
    add(kind, label, at, weight, text, share);
    at = at.plus(weight);
  }

  /** Adds a bar. One that is negative or beyond the chart is drawn as a line at its place. */
  private void add(Kind kind, String label, Weight from, Weight weight, String text, String share) {
    int left = Math.max(0, Math.min(place(from), FlowView.FULL - 1));
    int right = Math.max(left + 1, Math.min(place(from.plus(weight)), FlowView.FULL));
    rows.add(new FlowView.Row(kind, label, left, right - left, text, share));
  }

  private int place(Weight weight) {
    return Exact.round(
            weight.fraction().multiply(BigFraction.of(FlowView.FULL)).divide(longest.fraction()), 0)
        .intValueExact();
  }
}
