package gambrel.insight.month;

import gambrel.insight.month.figures.MonthRecords;
import gambrel.scenes.Scene;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A made-up shop of sixty steers cut in March 2026 by three boners, half of the loins on the bone,
 * two bodies of three the shop's own from three suppliers. Nothing differs but by chance, unless a
 * fault is planted. A loin is worth the same either way: 5 % of the body at 30, or 4 % at 37.50.
 */
final class BoningShop {
  static final List<String> BONERS = List.of("Wyn", "Dario", "Noor");
  static final List<String> SUPPLIERS = List.of("Hill", "Vale", "Moor");

  private static final int BODIES = 60;
  private static final LocalDate FIRST_CUT = LocalDate.of(2026, 3, 6);

  private final SplittableRandom dice;
  private final Scene scene;
  private final boolean bone;
  private final boolean fat;

  private BoningShop(Path folder, long seed, boolean bone, boolean fat, String loin) {
    this.dice = new SplittableRandom(seed);
    this.bone = bone;
    this.fat = fat;
    this.scene =
        Books.shop(folder)
            .file(
                "values.csv",
                "item,value,from,to",
                "mince,12,,",
                "short-loin," + loin + ",,",
                "tenderloin,37.5,,",
                "striploin,37.5,,",
                "bone,0.2,,",
                "fat,0.1,,")
            .file("bench.csv", "scale,from,to,body,batch,customer,boner");
  }

  /** Nothing but chance. */
  static MonthRecords clean(Path folder, long seed) {
    return new BoningShop(folder, seed, false, false, "30").march();
  }

  /** Wyn leaves 2 % of the body more on the bone. */
  static MonthRecords wynLeavesMeatOnTheBone(Path folder, long seed) {
    return new BoningShop(folder, seed, true, false, "30").march();
  }

  /** Moor's bodies have 4 % of the body more fat. */
  static MonthRecords moorsBodiesAreFat(Path folder, long seed) {
    return new BoningShop(folder, seed, false, true, "30").march();
  }

  /** A loin on the bone is sold a tenth too cheap. */
  static MonthRecords loinOnTheBoneIsCheap(Path folder, long seed) {
    return new BoningShop(folder, seed, false, false, "27").march();
  }

  private MonthRecords march() {
    for (int i = 0; i < BODIES; i++) {
      body(i);
    }
    return Books.march(scene);
  }

  private void body(int number) {
    var day = FIRST_CUT.plusDays(number / 3);
    String boner = BONERS.get(number % 3);
    String supplier = SUPPLIERS.get(dice.nextInt(3));
    boolean own = dice.nextInt(3) > 0;
    double cold = 200 + 15 * dice.nextGaussian();
    String id = String.format(Locale.ROOT, "B%03d", number);
    scene.body(
        String.join(
            ",",
            id,
            "beef",
            "steer",
            day.minusDays(5).toString(),
            own
                ? "shop,%s,%s".formatted(supplier, two(cold * (7 + 0.1 * dice.nextGaussian())))
                : "ann,,"));
    int hour = 8 + 2 * (number % 3);
    scene.add(
        "bench.csv",
        "bench,%sT%02d:00,%sT%02d:59,,,,%s".formatted(day, hour, day, hour + 1, boner));
    weigh(id, day, hour, cold, boner, supplier);
  }

  private void weigh(
      String id, LocalDate day, int hour, double cold, String boner, String supplier) {
    boolean onTheBone = dice.nextBoolean();
    double loin = 5 + 0.15 * dice.nextGaussian();
    double left = bone && boner.equals("Wyn") ? 2 : 0;
    double bones = (onTheBone ? 13.5 : 16.5) + 0.8 * dice.nextGaussian() + left;
    double fats = 6 + 0.8 * dice.nextGaussian() + (fat && supplier.equals("Moor") ? 4 : 0);
    double packed = onTheBone ? loin : loin * 0.8;
    var at = "%sT%02d:".formatted(day, hour);
    rail(id, day, cold);
    if (onTheBone) {
      line(at + "10", id, "pack t-bone", cold * packed / 100);
    } else {
      line(at + "10", id, "pack tenderloin", cold * packed * 0.3 / 100);
      line(at + "11", id, "pack striploin", cold * packed * 0.7 / 100);
    }
    line(at + "12", id, "pack mince", cold * (99.7 - packed - bones - fats) / 100);
    line(at + "13", id, "bin bone", cold * bones / 100);
    line(at + "14", id, "bin fat", cold * fats / 100);
  }

  private void rail(String id, LocalDate cut, double cold) {
    line(cut.minusDays(5) + "T10:00", id, "hot carcase", cold * 1.02);
    line(cut.minusDays(4) + "T10:00", id, "cold carcase", cold);
  }

  private void line(String time, String id, String what, double weight) {
    scene.weigh(time + " " + id + " " + what + " " + two(weight));
  }

  private static String two(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }
}
