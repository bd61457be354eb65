package gambrel.oracle;

import static java.math.RoundingMode.FLOOR;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** The lines of the picture on a statement's first page, from alive to the boxes. */
final class Picture {
  private final Map<String, BigFraction> numbers;
  private final Beast beast;
  private final String bins;
  private final List<ExactNight.Line> lines = new ArrayList<>();

  /** The first weight of the picture, of which all percentages are; null before it is known. */
  private BigFraction base;

  private Picture(Yield yield) {
    numbers = BodyNumbers.of(yield);
    beast = yield.body.beast;
    bins = yield.body.setup.bins();
  }

  /** Every line; none for a body of which nothing came yet, or that was condemned. */
  static List<ExactNight.Line> of(Yield yield) {
    var picture = new Picture(yield);
    boolean shown =
        yield.takeHome != null
            && !picture.beast.condemned()
            && yield.body.boning != null
            && yield.body.boning.signum() != 0;
    if (shown) {
      picture.rail();
      picture.boning();
    }
    return picture.lines;
  }

  /** Adds a weight that is left after a step. */
  private void stage(String label, BigFraction weight) {
    if (base == null) {
      base = weight;
    }
    add(label, weight, tenths(weight));
  }

  private void add(String label, BigFraction weight, long tenths) {
    lines.add(new ExactNight.Line(label, weight, BigFraction.of(tenths, 10)));
  }

  /** A weight's share of the first one in whole tenths of a percent. */
  private long tenths(BigFraction weight) {
    return Num.steps(Num.percent(weight, base), 1).longValueExact();
  }

  private boolean known(String... names) {
    return List.of(names).stream().allMatch(numbers::containsKey);
  }

  private void rail() {
    var hot = numbers.get("hot");
    if (known("live", "hot") && hot.compareTo(numbers.get("live")) < 0) {
      stage("live", numbers.get("live"));
      between(numbers.get("live"), hot, "dressing", BigFraction.ZERO, numbers.get("dressed_off"));
    }
    if (known("hot")) {
      stage("hot", hot);
    }
    if (known("hot", "chill_shrink_pct")) {
      var trimmed = numbers.get("trim_before_cold");
      between(hot, numbers.get("cold"), "chill", trimmed, numbers.get("chill_loss"));
    }
    // Without a hot weight the cold one is the first, whether it is drawn or not.
    if (base == null && known("cold")) {
      base = numbers.get("cold");
    }
    var boning = numbers.get("boning");
    boolean left = known("cold", "chill_shrink_pct") && numbers.get("cold").compareTo(boning) != 0;
    if (left || known("cold", "ageing_shrink_pct")) {
      stage("cold", numbers.get("cold"));
    }
    if (known("cold", "ageing_shrink_pct")) {
      var trimmed = numbers.get("trim_after_cold");
      between(numbers.get("cold"), boning, "ageing", trimmed, numbers.get("ageing_loss"));
    }
  }

  /** What went between two weights, with the percentage that lies between theirs. */
  private void between(
      BigFraction before, BigFraction after, String label, BigFraction trimmed, BigFraction lost) {
    var tenths = parts(tenths(before) - tenths(after), List.of(trimmed, lost));
    if (trimmed.signum() != 0) {
      add("trimmed", trimmed, tenths.get(0));
    }
    add(label, lost, tenths.get(1));
  }

  private void boning() {
    if (beast.uncut()) {
      stage("home", numbers.get("boning"));
      return;
    }
    stage("boning", numbers.get("boning"));
    int first = lines.size();
    part("home", "boning_home", true);
    part("pending", "boning_pending", false);
    part("bone", "boning_bone", false);
    part("fat", "boning_fat", false);
    part("waste", "boning_waste", false);
    part("unweighed", "unweighed", true);
    part(bins.equals("partly") ? "bench.partly" : "bench", "cutting_loss", true);
    part("batch", "boning_batch_loss", false);
    var parts = List.copyOf(lines.subList(first, lines.size()));
    var weights = parts.stream().map(ExactNight.Line::weight).toList();
    var tenths = parts(tenths(numbers.get("boning")), weights);
    lines.subList(first, lines.size()).clear();
    for (int i = 0; i < parts.size(); i++) {
      add(parts.get(i).label(), parts.get(i).weight(), tenths.get(i));
    }
  }

  /** A part of nothing is left out unless it is one that is always told. */
  private void part(String label, String name, boolean always) {
    if (known(name) && (always || Num.steps(numbers.get(name), 3).signum() != 0)) {
      add(label, numbers.get(name), 0);
    }
  }

  /** Tenths of a percent that add up to {@code total}: rounded down, the rest by remainder. */
  private List<Long> parts(long total, List<BigFraction> weights) {
    var exact = weights.stream().map(w -> Num.round(w.multiply(1000).divide(base), 20));
    var rests = new ArrayList<BigDecimal>();
    var tenths = new ArrayList<Long>();
    exact.forEach(
        value -> {
          var down = value.setScale(0, FLOOR);
          tenths.add(down.longValueExact());
          rests.add(value.subtract(down));
        });
    long left = total - tenths.stream().mapToLong(Long::longValue).sum();
    for (; left > 0; left--) {
      int most = 0;
      for (int i = 1; i < rests.size(); i++) {
        most = rests.get(i).compareTo(rests.get(most)) > 0 ? i : most;
      }
      tenths.set(most, tenths.get(most) + 1);
      rests.set(most, BigDecimal.valueOf(-1));
    }
    return tenths;
  }
}
