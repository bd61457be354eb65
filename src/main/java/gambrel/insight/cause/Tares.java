package gambrel.insight.cause;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which tares the shop uses for a code at a scale, and which rows show none. */
final class Tares {
  private static final int LEAST_ROWS = 3;

  private final RowIndex traces;
  private final Map<List<String>, Habit> habits = new HashMap<>();

  Tares(RowIndex traces) {
    this.traces = traces;
    traces.night().ledger().weighings().stream()
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
      } else if (traces.cell(weighing, Field.NET).isEmpty()) {
        grossOnly++;
      }
    }

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

  private BigDecimal printed(Weighing weighing) {
    try {
      String text = traces.cell(weighing, Field.TARE);
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

  /** The tare that a row with a net weight of its own may lack. */
  Optional<Lacking> lacking(Weighing weighing) {
    boolean bare = !traces.cell(weighing, Field.NET).isEmpty() && printed(weighing).signum() == 0;
    if (!bare) {
      return Optional.empty();
    }
    var habit = habits.get(key(weighing));
    return habit
        .usual()
        .map(tare -> new Lacking(tare, true))
        .or(() -> ofCode(weighing).map(tare -> new Lacking(tare, habit.isGrossAsARule())));
  }

  private Optional<BigDecimal> ofCode(Weighing weighing) {
    var shop = traces.night().shop().settings().unit();
    return Optional.of(weighing.code().tare())
        .filter(tare -> tare.hundredThousandths() > 0)
        .map(tare -> Exact.round(shop.convert(tare.decimal(), weighing.unit()), Weight.DECIMALS));
  }

  /** Takes a tare off a row's net weight; empty where nothing would be left. */
  Optional<RowChange> take(Weighing weighing, BigDecimal tare) {
    var net = plain(weighing.shown().subtract(tare));
    if (net.signum() <= 0) {
      return Optional.empty();
    }
    boolean all =
        !traces.cell(weighing, Field.GROSS).isEmpty()
            && !traces.cell(weighing, Field.TARE).isEmpty();
    return Optional.of(
        new RowChange(
            weighing,
            new ProposedFix.Net(
                net, all ? Optional.of(plain(tare)) : Optional.<BigDecimal>empty())));
  }

  /** Without more zeros than a scale prints. */
  static BigDecimal plain(BigDecimal value) {
    var stripped = value.stripTrailingZeros();
    return stripped.scale() < 2 ? stripped.setScale(2) : stripped;
  }

  /** Every weighing of a list that lacks a tare which others show, that tare taken off. */
  List<RowChange> takeShown(List<Weighing> weighings) {
    var touches = new ArrayList<RowChange>();
    for (var weighing : weighings) {
      lacking(weighing)
          .filter(Lacking::shown)
          .flatMap(lacking -> take(weighing, lacking.tare()))
          .ifPresent(touches::add);
    }
    return touches;
  }
}
