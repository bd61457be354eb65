package gambrel.insight.cause;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tares that the shop uses for a code at a scale, and the rows that show none. */
final class Tares {
  private static final int LEAST_ROWS = 3;

  private final RowIndex rows;
  private final Map<List<String>, Habit> habits = new HashMap<>();

  Tares(RowIndex rows) {
    this.rows = rows;
    rows.night().ledger().weighings().stream()
        .filter(weighing -> weighing.step().movesMass())
        .forEach(w -> habits.computeIfAbsent(key(w), k -> new Habit()).add(w));
  }

  private static List<String> key(Weighing weighing) {
    return List.of(weighing.scale().id(), weighing.code().pattern());
  }

  /** How rows of one code are tared at one scale. */
  private final class Habit {
    private final Map<BigDecimal, Integer> printed = new HashMap<>();
    private int grossOnly;
    private int all;

    void add(Weighing weighing) {
      all++;
      var tare = printed(weighing);
      if (tare.signum() > 0) {
        printed.merge(tare.stripTrailingZeros(), 1, Integer::sum);
      } else if (rows.cell(weighing, Field.NET).isEmpty()) {
        grossOnly++;
      }
    }

    /** The tare that most rows show; empty if most show none. */
    Optional<BigDecimal> usual() {
      int tared = printed.values().stream().mapToInt(n -> n).sum();
      return printed.entrySet().stream()
          .filter(e -> e.getValue() >= LEAST_ROWS && tared * 2 > all)
          .max(
              Map.Entry.<BigDecimal, Integer>comparingByValue()
                  .thenComparing(Map.Entry.comparingByKey()))
          .map(Map.Entry::getKey);
    }

    boolean isGrossAsARule() {
      return grossOnly >= LEAST_ROWS && grossOnly * 2 > all;
    }
  }

  /** The tare that a row shows, in its unit; zero if it shows none. */
  private BigDecimal printed(Weighing weighing) {
    try {
      String text = rows.cell(weighing, Field.TARE);
      return text.isEmpty() ? BigDecimal.ZERO : new BigDecimal(text);
    } catch (NumberFormatException e) {
      return BigDecimal.ZERO;
    }
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
    var habit = habits.get(key(weighing));
    return habit
        .usual()
        .map(tare -> new Lacking(tare, true))
        .or(
            () ->
                in(weighing.unit(), weighing.code())
                    .map(tare -> new Lacking(tare, habit.isGrossAsARule())));
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

  /** A number with at least two decimals and no more zeros than that. */
  static BigDecimal plain(BigDecimal value) {
    var stripped = value.stripTrailingZeros();
    return stripped.scale() < 2 ? stripped.setScale(2) : stripped;
  }

  /** Takes the tare that others show off every weighing of a list that lacks it. */
  List<RowChange> takeShown(List<Weighing> weighings) {
    return weighings.stream()
        .flatMap(
            weighing ->
                lacking(weighing)
                    .filter(Lacking::shown)
                    .flatMap(lacking -> take(weighing, lacking.tare()))
                    .stream())
        .toList();
  }
}
