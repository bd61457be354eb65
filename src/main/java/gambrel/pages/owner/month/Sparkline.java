package gambrel.pages.owner.month;

import gambrel.pages.views.FirstPage.Dot;
import gambrel.pages.views.FirstPage.Spark;
import gambrel.trade.measure.Exact;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Draws a figure of months in a row; the heights of lowest and highest fill the drawing. */
final class Sparkline {
  private static final int WIDTH = 140;
  private static final int HEIGHT = 22;
  private static final int EDGE = 4;

  private Sparkline() {}

  /** The drawing of some months, at least two; months without a figure are gaps. */
  static Spark of(List<Optional<BigFraction>> months) {
    var known = months.stream().flatMap(Optional::stream).toList();
    var lines = new ArrayList<List<Dot>>();
    var dots = new ArrayList<Dot>();
    boolean goesOn = false;
    for (int i = 0; i < months.size(); i++) {
      goesOn &= months.get(i).isPresent();
      if (months.get(i).isPresent()) {
        int x = EDGE + i * (WIDTH - 2 * EDGE) / (months.size() - 1);
        var dot = new Dot(x, y(months.get(i).get(), known), i == months.size() - 1);
        if (!goesOn) {
          lines.add(new ArrayList<>());
        }
        lines.get(lines.size() - 1).add(dot);
        dots.add(dot);
        goesOn = true;
      }
    }
    return new Spark(
        WIDTH,
        HEIGHT,
        lines.stream().filter(line -> line.size() > 1).map(Sparkline::text).toList(),
        dots);
  }

  private static String text(List<Dot> line) {
    return line.stream().map(dot -> dot.x() + "," + dot.y()).collect(Collectors.joining(" "));
  }

  private static int y(BigFraction value, List<BigFraction> known) {
    var least = known.stream().min(Comparator.naturalOrder()).orElseThrow();
    var range = known.stream().max(Comparator.naturalOrder()).orElseThrow().subtract(least);
    if (range.signum() == 0) {
      return HEIGHT / 2;
    }
    var height = value.subtract(least).multiply(HEIGHT - 2 * EDGE).divide(range);
    return HEIGHT - EDGE - Exact.round(height, 0).intValueExact();
  }
}
