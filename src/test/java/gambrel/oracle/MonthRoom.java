package gambrel.oracle;

import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
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
    rows("", m -> true, rows);
    for (var whose : List.of("customers", "own", "shared")) {
      rows(whose, m -> months.whose(m).equals(whose), rows);
    }
  }

  private void rows(
      String whose, Predicate<Months.Member> which, Consumer<MonthTable.Figure> rows) {
    var number = bodies(which).size();
    var unit = months.world.setup.unit;
    of(which)
        .forEach(
            (name, sum) ->
                rows.accept(
                    new MonthTable.Figure(
                        month,
                        "room_" + name,
                        whose,
                        "",
                        "",
                        number,
                        Num.text(sum),
                        unit,
                        0,
                        "",
                        List.of())));
  }

  private List<Months.Member> bodies(Predicate<Months.Member> which) {
    return Stream.concat(months.cut(month).stream(), months.whole(month).stream())
        .filter(m -> months.isCounted(m) && m.number("boning") != null)
        .filter(which)
        .toList();
  }

  /** The sums of some bodies by name, without {@code room_}; those of nothing are missing. */
  Map<String, BigFraction> of(Predicate<Months.Member> which) {
    sums.clear();
    bodies(which).forEach(this::add);
    sums.values().removeIf(sum -> sum.signum() == 0);
    return Map.copyOf(sums);
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
    if (body.number("offal") != null) {
      add("offal", body.number("offal"));
    }
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
