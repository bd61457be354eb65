package gambrel.files.guess;

import gambrel.files.folder.Addition;
import gambrel.trade.measure.Groups;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.shop.IdIndex;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The rows that an empty scales.csv needs, each with the step that the scale's weights show. */
final class MissingScales {
  /** Of fewer weights all may by chance be of a coarser step than the scale's. */
  private static final int FEWEST_WEIGHTS = 8;

  /**
   * The steps that scales have, the largest first: 1, 2 or 5 times a power of ten (OIML R 76-1,
   * from memory), and binary fractions of ounces (common practice).
   */
  private static final List<BigDecimal> STEPS =
      Stream.concat(
              IntStream.rangeClosed(-4, 3)
                  .boxed()
                  .flatMap(power -> Stream.of(1, 2, 5).map(step -> scaled(step, power))),
              Stream.of("0.25", "0.125", "0.0625").map(BigDecimal::new))
          .sorted(Comparator.reverseOrder())
          .toList();

  private final Collection<String> known;
  private final List<String> rows = new ArrayList<>();
  private final List<String> open = new ArrayList<>();

  /** The scales that a shop lacks which has these. */
  MissingScales(Collection<String> known) {
    this.known = known;
  }

  private static BigDecimal scaled(int step, int power) {
    return BigDecimal.valueOf(step).scaleByPowerOfTen(power);
  }

  /**
   * Adds the scales that exports name, if they are the same by all ways to read these.
   *
   * @return whether there are any
   */
  boolean add(List<AsRead> readings) {
    var found = readings.stream().map(this::of).toList();
    var first = found.get(0);
    boolean alike = found.stream().allMatch(other -> other.all().equals(first.all()));
    if (alike) {
      rows.addAll(first.rows);
      open.addAll(first.open);
    }
    return alike && !first.all().isEmpty();
  }

  private MissingScales of(AsRead read) {
    var found = new MissingScales(known);
    var ids = new IdIndex(known);
    var named =
        read.rows().stream()
            .filter(row -> !row.row().get(Field.SCALE).isEmpty())
            .filter(row -> ids.find(row.row().get(Field.SCALE)).isEmpty());
    Groups.inOrder(named, row -> row.row().get(Field.SCALE)).forEach(found::add);
    return found;
  }

  private void add(String scale, List<ReadRow> of) {
    var units = of.stream().flatMap(row -> row.unit().stream()).distinct().toList();
    String row = scale + ',' + (units.size() == 1 ? units.get(0).id() : "UNIT") + ',';
    var step = Optional.of(of).filter(all -> units.size() == 1).flatMap(MissingScales::step);
    step.map(BigDecimal::toPlainString)
        .ifPresentOrElse(it -> rows.add(row + it), () -> open.add(row + "DIVISION"));
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

  /** The ids of all of them. */
  Set<String> ids() {
    return all().stream().map(row -> row.replaceFirst(",.*", "")).collect(Collectors.toSet());
  }

  /** All rows, those first that are sure. */
  List<String> all() {
    return Groups.both(rows, open);
  }

  /** The rows that are sure; empty if there are none. */
  Optional<Addition> addition() {
    return Optional.of(rows)
        .filter(found -> !found.isEmpty())
        .map(found -> new Addition("scales.csv", "scale,unit,division", found, ""));
  }
}
