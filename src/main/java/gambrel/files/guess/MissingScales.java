package gambrel.files.guess;

import gambrel.files.folder.Addition;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows that an empty scales.csv needs, each with the step that the scale's weights show. */
final class MissingScales {
  /** Of fewer weights all may by chance be of a coarser step than the scale's. */
  private static final int FEWEST_WEIGHTS = 8;

  /** Scale steps are 1, 2 or 5 times a power of ten (OIML R 76-1, 3.2). */
  private static final List<BigDecimal> STEPS =
      Stream.of(3, 2, 1, 0, -1, -2, -3, -4)
          .flatMap(power -> Stream.of(5, 2, 1).map(step -> scaled(step, power)))
          .toList();

  private final List<String> rows = new ArrayList<>();

  private static BigDecimal scaled(int step, int power) {
    return BigDecimal.valueOf(step).scaleByPowerOfTen(power);
  }

  /** Adds the scales that some rows name. */
  void add(AsRead read) {
    Groups.inOrder(read.rows().stream(), row -> row.row().get(Field.SCALE)).forEach(this::add);
  }

  private void add(String scale, List<ReadRow> of) {
    var units = of.stream().flatMap(row -> row.unit().stream()).collect(Collectors.toSet());
    if (!scale.isEmpty() && units.size() == 1) {
      step(of).map(step -> row(scale, units.iterator().next(), step)).ifPresent(rows::add);
    }
  }

  private static String row(String scale, WeightUnit unit, BigDecimal step) {
    return String.join(",", scale, "", unit.id(), step.toPlainString());
  }

  /** The largest step of which all weights are multiples; empty if they are too few to tell. */
  private static Optional<BigDecimal> step(List<ReadRow> rows) {
    Set<BigDecimal> weights =
        rows.stream()
            .flatMap(row -> AsRead.weight(row).stream())
            .map(BigDecimal::stripTrailingZeros)
            .collect(Collectors.toSet());
    return STEPS.stream()
        .filter(step -> weights.size() >= FEWEST_WEIGHTS)
        .filter(step -> weights.stream().allMatch(w -> w.remainder(step).signum() == 0))
        .findFirst();
  }

  /** The rows; empty if there are none. */
  Optional<Addition> addition() {
    return Optional.of(rows)
        .filter(found -> !found.isEmpty())
        .map(found -> new Addition("scales.csv", "scale,where,unit,division", found));
  }
}
