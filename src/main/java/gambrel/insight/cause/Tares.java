package gambrel.insight.cause;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** The tares that the shop uses for a code at a scale, and the rows that show none. */
final class Tares {
  private static final int LEAST_ROWS = 3;

  private final RowIndex rows;
  private final Map<List<String>, List<Weighing>> alike;
  private final Map<List<String>, Habit> habits = new HashMap<>();

  Tares(RowIndex rows) {
    this.rows = rows;
    this.alike =
        Groups.inOrder(
            rows.night.ledger().weighings().stream().filter(w -> w.step().movesMass()), Tares::key);
  }

  private static List<String> key(Weighing weighing) {
    return List.of(weighing.scale().id(), weighing.code().pattern());
  }

  /**
   * How rows of one code are tared at one scale.
   *
   * @param usual the tare that most rows show; empty if most show none
   * @param gross whether most rows come gross, without a net weight
   */
  private record Habit(Optional<BigDecimal> usual, boolean gross) {}

  private Habit habit(List<Weighing> alike) {
    var shown =
        alike.stream()
            .map(row -> printed(row).stripTrailingZeros())
            .filter(tare -> tare.signum() > 0)
            .collect(Collectors.groupingBy(tare -> tare, Collectors.counting()));
    long tared = shown.values().stream().mapToLong(n -> n).sum();
    long gross =
        alike.stream()
            .filter(row -> printed(row).signum() <= 0 && rows.cell(row, Field.NET).isEmpty())
            .count();
    return new Habit(
        shown.entrySet().stream()
            .filter(tare -> tare.getValue() >= LEAST_ROWS && tared * 2 > alike.size())
            .max(
                Map.Entry.<BigDecimal, Long>comparingByValue()
                    .thenComparing(Map.Entry.comparingByKey()))
            .map(Map.Entry::getKey),
        gross >= LEAST_ROWS && gross * 2 > alike.size());
  }

  /** The tare that a row shows, in its unit; zero if it shows none. */
  private BigDecimal printed(Weighing weighing) {
    return DecimalText.of(rows.cell(weighing, Field.TARE)).orElse(BigDecimal.ZERO);
  }

  /**
   * A tare that a row may lack.
   *
   * @param tare in the row's unit
   * @param shown whether other rows of the code show it, or come gross, and this one does not
   */
  record Lacking(BigDecimal tare, boolean shown) {}

  /** The tare that a row may lack; empty if it has no net weight of its own, or shows a tare. */
  Optional<Lacking> lacking(Weighing weighing) {
    if (rows.cell(weighing, Field.NET).isEmpty() || printed(weighing).signum() != 0) {
      return Optional.empty();
    }
    var habit = habits.computeIfAbsent(key(weighing), key -> habit(alike.get(key)));
    return habit
        .usual()
        .map(tare -> new Lacking(tare, true))
        .or(
            () ->
                in(weighing.unit(), weighing.code()).map(tare -> new Lacking(tare, habit.gross())));
  }

  /** The tare of a code in {@code unit}; empty if it has none. */
  Optional<BigDecimal> in(WeightUnit unit, ScaleCode code) {
    return Optional.of(code.tare())
        .filter(tare -> tare.hundredThousandths() > 0)
        .map(tare -> Exact.round(rows.unit().convert(tare.decimal(), unit), Weight.DECIMALS));
  }

  /** Takes a tare off a row's net weight; empty if nothing would be left. */
  Optional<RowChange> take(Weighing weighing, BigDecimal tare) {
    var net = plain(weighing.shown().subtract(tare));
    boolean showsAll =
        !rows.cell(weighing, Field.GROSS).isEmpty() && !rows.cell(weighing, Field.TARE).isEmpty();
    var shown = Optional.of(plain(tare)).filter(t -> showsAll);
    return net.signum() <= 0
        ? Optional.empty()
        : Optional.of(RowChange.net(weighing, net, shown, rows.unit()));
  }

  /** Whether a hook or tub may weigh so much: half a kilogram to {@code most}; from memory. */
  static boolean isEmptyWeight(BigFraction weight, WeightUnit unit, int most) {
    return weight.compareTo(WeightUnit.KG.convert(new BigDecimal("0.5"), unit)) >= 0
        && weight.compareTo(WeightUnit.KG.convert(BigDecimal.valueOf(most), unit)) <= 0;
  }

  /** A number with at least two decimals and no more zeros than that. */
  static BigDecimal plain(BigDecimal value) {
    var stripped = value.stripTrailingZeros();
    return stripped.scale() < 2 ? stripped.setScale(2) : stripped;
  }
}
