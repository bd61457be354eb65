package gambrel.demo;

import java.time.LocalDate;
import java.time.LocalTime;

/** The test weights that go on every scale on Monday mornings. */
final class TestWeights {
  private static final LocalDate FIRST = LocalDate.parse("2026-07-06");
  private static final LocalDate LAST = LocalDate.parse("2026-09-28");

  private TestWeights() {}

  static void weigh(Floor floor) {
    var dice = new Dice("test weights");
    for (var monday = FIRST; !monday.isAfter(LAST); monday = monday.plusWeeks(1)) {
      var shift = new Shift(monday, LocalTime.of(5, 48));
      int drift = dice.between(1, 4) == 1 ? 5 : 0;
      floor.rail.weigh(shift.after(dice.between(10, 90)), "992", 20_000);
      floor.bench1.weigh(shift.after(dice.between(90, 180)), "991", 5_000 + drift);
      floor.bench2.weigh(shift.after(dice.between(60, 120)), "992", 20_000 + 4 * drift);
    }
  }
}
