package gambrel.oracle;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where all weight of a month went, of the bodies that count: the figures {@code room_...}. */
final class MonthRoom {
  private static final Map<String, String> SPLIT =
      Map.of(
          "home", "boning_home",
          "bone", "boning_bone",
          "fat", "boning_fat",
          "waste", "boning_waste",
          "batch", "boning_batch_loss",
          "unweighed", "unweighed");

  private final Months months;
  private final YearMonth month;
  private final Map<String, BigFraction> sums = new LinkedHashMap<>();

  MonthRoom(Months months, YearMonth month) {
    this.months = months;
    this.month = month;
  }

  void rows(Consumer<MonthTable.Figure> rows) {
    var bodies = new ArrayList<>(months.cut(month));
    bodies.addAll(months.whole(month));
    bodies.removeIf(m -> !months.isCounted(m) || m.number("boning") == null);
    bodies.forEach(this::add);
    sums.forEach(
        (name, sum) -> {
          if (sum.signum() != 0) {
            var unit = months.world.setup.unit;
            rows.accept(
                new MonthTable.Figure(
                    month,
                    "room_" + name,
                    "",
                    "",
                    "",
                    bodies.size(),
                    Num.text(sum),
                    unit,
                    0,
                    "",
                    List.of()));
          }
        });
  }

  private void add(String name, BigFraction weight) {
    sums.merge(name, weight, BigFraction::add);
  }

  private void add(Months.Member body) {
    var boning = body.number("boning");
    boolean aged = !body.yield().body.standing.rows("aged").isEmpty();
    var chill = body.number("chill_loss");
    var hanging = body.number("ageing_loss");
    var first = boning;
    if (!aged || hanging != null) {
      if (chill != null && body.number("hot").signum() != 0) {
        first = body.number("hot");
        add("chill", chill);
        add("trim", body.number("trim_before_cold"));
      } else if (body.number("cold") != null) {
        first = body.number("cold");
      }
      if (hanging != null) {
        add("hanging", hanging);
        add("trim", body.number("trim_after_cold"));
      }
    }
    add("first", first);
    if (body.isUncut()) {
      add("whole", boning);
    } else {
      add("boning", boning);
      SPLIT.forEach(
          (name, number) -> {
            if (body.number(number) != null) {
              add(name, body.number(number));
            }
          });
      var loss = body.number("cutting_loss");
      if (loss != null) {
        var hung = body.yield().hangingAllowed();
        hung = loss.compareTo(hung) < 0 ? loss : hung;
        hung = hung.signum() < 0 ? BigFraction.ZERO : hung;
        add("hung_unweighed", hung);
        add("bench", loss.subtract(hung));
      }
    }
  }
}
