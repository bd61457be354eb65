package gambrel.oracle;

import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Sums of a month that its page prints, by names such as {@code customers beef chill_loss}: whose,
 * species ({@code all} for all together) and figure. A number of bodies is {@code ... bodies}. What
 * no body has is missing.
 */
final class MonthNumbers {
  private final Map<String, BigFraction> numbers = new LinkedHashMap<>();
  private final Months months;
  private final YearMonth month;

  private MonthNumbers(Months months, YearMonth month) {
    this.months = months;
    this.month = month;
  }

  static Map<String, BigFraction> of(Months months, YearMonth month) {
    var numbers = new MonthNumbers(months, month);
    for (var whose : List.of("customers", "own", "shared", "any")) {
      Predicate<Months.Member> of = m -> whose.equals("any") || months.whose(m).equals(whose);
      numbers.add(whose + " all ", of);
      for (var species : months.world.setup.trees.keySet()) {
        numbers.add(whose + " " + species + " ", of.and(m -> m.species().equals(species)));
      }
    }
    return numbers.numbers;
  }

  private void add(String prefix, Predicate<Months.Member> which) {
    for (var loss : MonthLoss.values()) {
      var of = loss.of(months, month).stream().filter(which).toList();
      ratio(prefix + loss.id() + "_loss", of, loss.lost, loss.of);
    }
    var settled = months.settled(month).stream().filter(which).toList();
    ratio(prefix + "take_home", settled, "take_home", "cold");
    var room = new MonthRoom(months, month).of(which);
    room.forEach((name, sum) -> numbers.put(prefix + "room_" + name, sum));
  }

  /** Part, whole, percentage and number of the bodies of which both are known. */
  private void ratio(String name, List<Months.Member> bodies, String part, String whole) {
    var known =
        bodies.stream()
            .filter(m -> m.number(part) != null && m.number(whole) != null)
            .filter(m -> m.number(whole).signum() != 0)
            .toList();
    if (!known.isEmpty()) {
      numbers.put(name, MonthTable.sum(known, part));
      numbers.put(name + " of", MonthTable.sum(known, whole));
      numbers.put(name + " pct", Num.percent(numbers.get(name), numbers.get(name + " of")));
      numbers.put(name + " bodies", BigFraction.of(known.size()));
    }
  }
}
