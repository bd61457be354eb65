package gambrel.oracle;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** The lines of the picture on a statement's first page, from alive to the boxes. */
final class Picture {
  private final Map<String, BigFraction> numbers;
  private final Beast beast;
  private final String bins;
  private final List<ExactNight.Line> lines = new ArrayList<>();

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

  private void add(String label, BigFraction weight, String of, BigFraction percent) {
    lines.add(new ExactNight.Line(label, weight, percent == null ? "" : of, percent));
  }

  private boolean known(String... names) {
    return List.of(names).stream().allMatch(numbers::containsKey);
  }

  private void rail() {
    var hot = numbers.get("hot");
    boolean alive = known("live", "hot") && hot.compareTo(numbers.get("live")) < 0;
    if (alive) {
      add("live", numbers.get("live"), "", null);
      add("dressing", numbers.get("dressed_off"), "live", numbers.get("dressed_off_pct"));
    }
    if (known("hot")) {
      add("hot", hot, "live", alive ? numbers.get("dressing_pct") : null);
    }
    if (known("hot", "chill_shrink_pct")) {
      trimmed("trim_before_cold");
      add("chill", numbers.get("chill_loss"), "hot", numbers.get("chill_shrink_pct"));
    }
    if (known("cold", "ageing_shrink_pct")) {
      add("cold", numbers.get("cold"), "hot", numbers.get("cold_of_hot_pct"));
      trimmed("trim_after_cold");
      add("ageing", numbers.get("ageing_loss"), "cold", numbers.get("ageing_shrink_pct"));
    }
  }

  private void trimmed(String name) {
    if (numbers.get(name).signum() != 0) {
      add("trimmed", numbers.get(name), "", null);
    }
  }

  private void boning() {
    if (beast.uncut()) {
      add("home", numbers.get("boning"), "", null);
      return;
    }
    add("boning", numbers.get("boning"), "100", Num.HUNDRED);
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
    var tenths = tenths(parts.stream().map(ExactNight.Line::weight).toList());
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      lines.set(first + i, new ExactNight.Line(part.label(), part.weight(), "100", tenths.get(i)));
    }
  }

  /** A part of nothing is left out unless it is one that is always told. */
  private void part(String label, String name, boolean always) {
    if (known(name) && (always || Num.steps(numbers.get(name), 3).signum() != 0)) {
      add(label, numbers.get(name), "100", BigFraction.ZERO);
    }
  }

  /** Percentages that add up to 100.0; where a part is below nothing, each is rounded alone. */
  static List<BigFraction> tenths(List<BigFraction> weights) {
    var rounded = weights.stream().map(w -> Num.rounded(w, 3)).toList();
    var sum = rounded.stream().reduce(BigFraction.ZERO, BigFraction::add);
    if (sum.signum() <= 0) {
      return rounded.stream().map(w -> BigFraction.ZERO).toList();
    }
    if (rounded.stream().anyMatch(w -> w.signum() < 0)) {
      return rounded.stream().map(w -> Num.rounded(Num.percent(w, sum), 1)).toList();
    }
    var byPlace = new TreeMap<String, BigFraction>();
    for (int i = 0; i < rounded.size(); i++) {
      byPlace.put(String.format("%04d", i), rounded.get(i));
    }
    return Split.of(BigInteger.valueOf(1000), byPlace).values().stream()
        .map(tenths -> Num.ofSteps(tenths, 1))
        .toList();
  }
}
