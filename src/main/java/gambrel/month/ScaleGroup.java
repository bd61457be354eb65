package gambrel.month;

import gambrel.balance.BodyBalance;
import gambrel.balance.Drawn;
import gambrel.weighing.Weighing;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Which scales stand behind a body's balance. */
final class ScaleGroup {
  private static final Drawn<BodyBalance, Optional<String>> BENCH =
      new Drawn<>(body -> main(body.weighings().out()));
  private static final Drawn<BodyBalance, Optional<String>> RAIL =
      new Drawn<>(body -> main(body.boningWeighings()));

  private ScaleGroup() {}

  /** The scale that most of what came off the block was weighed on. */
  static Optional<String> bench(BodyBalance balance) {
    return BENCH.of(balance);
  }

  /** The scale that most of the weight into the boning room was weighed on. */
  static Optional<String> rail(BodyBalance balance) {
    return RAIL.of(balance);
  }

  private static Optional<String> main(List<Weighing> weighings) {
    Map<String, Long> byScale = new HashMap<>();
    for (var weighing : weighings) {
      byScale.merge(weighing.scale().id(), weighing.net().hundredThousandths(), Long::sum);
    }
    return byScale.entrySet().stream()
        .max(Map.Entry.<String, Long>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey);
  }

  /** The bench scales of some bodies. */
  static SortedSet<String> benches(Collection<LossChart.Point> points) {
    var scales = new TreeSet<String>();
    points.forEach(p -> bench(p.account().balance()).ifPresent(scales::add));
    return scales;
  }

  /** The rail scales of some bodies. */
  static SortedSet<String> rails(Collection<LossChart.Point> points) {
    var scales = new TreeSet<String>();
    points.forEach(p -> rail(p.account().balance()).ifPresent(scales::add));
    return scales;
  }

  /** Those of {@code points} that were weighed mostly on a bench scale. */
  static List<LossChart.Point> on(String scale, List<LossChart.Point> points) {
    return points.stream()
        .filter(p -> bench(p.account().balance()).filter(scale::equals).isPresent())
        .toList();
  }
}
