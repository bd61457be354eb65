package gambrel.insight.usual;

import gambrel.scenes.Scene;
import gambrel.trade.reckoning.Night;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A made-up boning room. A body of about 300 kg dresses to about 56 %, loses about 2 % in the
 * chiller and 0.8 % on the bench, and is boned out or has its loin on the bone. Days and bodies
 * differ by chance, normally and independently. Rail to 0.1 kg, bench to 0.02 kg.
 */
final class SteadyRoom {
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final double HOOK = 3.6;

  /** What is wrong with a body. */
  enum Fault {
    /** Nothing. */
    NONE,
    /** A tub of 1.6 to 2 % of the body was never weighed: too little to be held for it. */
    TUB_MISSING,
    /** A tub of 5 to 8 % was spilt, and the shop released the body. */
    TUB_SPILT,
    /** One side was weighed hot with its hook of 3.6 kg. */
    HOOK_LEFT_IN
  }

  private final SplittableRandom dice;
  private final Scene scene;
  private int bodies;
  private LocalDate day = FIRST;
  private double chillOfDay;

  SteadyRoom(Path folder, long seed) {
    this.dice = new SplittableRandom(seed);
    this.scene =
        new Scene(folder)
            .set("limit.revisions=5")
            .file("bodies.csv", "body,species,class,killed,customer,live_weight")
            .file("scales.csv", "scale,division,class", "rail,0.1,", "bench,0.02,");
    nextDay();
  }

  /** Goes on to the next day of killing. */
  void nextDay() {
    day = day.plusDays(1);
    chillOfDay = 2 + 0.12 * dice.nextGaussian();
  }

  /** Kills a body today, cuts it after five to nine days and returns its id. */
  String body(String category, boolean onTheBone, Fault fault) {
    String id = String.format(Locale.ROOT, "U%04d", ++bodies);
    double hot = 300 + 12 * dice.nextGaussian();
    double live = hot / (0.56 + 0.012 * dice.nextGaussian());
    scene.body("%s,beef,%s,%s,ann,%.0f".formatted(id, category, day, live));
    double cold = hot * (100 - chillOfDay - 0.2 * dice.nextGaussian()) / 100;
    boolean hook = fault == Fault.HOOK_LEFT_IN;
    line(day + "T10:00", id, "hot left-side", hot / 2 + (hook ? HOOK : 0), 1);
    line(day + "T10:01", id, "hot right-side", hot / 2, 1);
    line(day.plusDays(1) + "T10:00", id, "cold left-side", cold / 2, 1);
    line(day.plusDays(1) + "T10:01", id, "cold right-side", cold / 2, 1);
    cut(id, day.plusDays(1), cold, onTheBone, fault);
    return id;
  }

  private void cut(String id, LocalDate cutting, double cold, boolean onTheBone, Fault fault) {
    double lost = 0.8 + 0.15 * dice.nextGaussian();
    double bones = (onTheBone ? 13.5 : 16.5) + 0.8 * dice.nextGaussian();
    double fats = 6 + 0.8 * dice.nextGaussian();
    double loin = onTheBone ? 5 : 4;
    double missing =
        switch (fault) {
          case TUB_MISSING -> 1.6 + 0.4 * dice.nextDouble();
          case TUB_SPILT -> 5 + 3 * dice.nextDouble();
          default -> 0;
        };
    line(
        cutting + "T12:00", id, onTheBone ? "pack t-bone" : "pack striploin", cold * loin / 100, 2);
    double mince = 100 - lost - missing - bones - fats - loin;
    line(cutting + "T12:10", id, "pack mince", cold * mince / 100, 2);
    line(cutting + "T12:20", id, "bin bone", cold * bones / 100, 2);
    line(cutting + "T12:30", id, "bin fat", cold * fats / 100, 2);
    if (fault == Fault.TUB_SPILT) {
      scene.release(id, "release", cutting.plusDays(8) + "T10:00");
    }
  }

  private void line(String time, String id, String what, double weight, int decimals) {
    var steps = BigDecimal.valueOf(decimals == 1 ? weight : weight / 2);
    var shown = steps.setScale(decimals, RoundingMode.HALF_UP);
    var net = decimals == 1 ? shown : shown.multiply(BigDecimal.valueOf(2));
    scene.weigh(time + " " + id + " " + what + " " + net.toPlainString());
  }

  /** What is known of it a fortnight later. */
  Night night() {
    return scene.reckon(day.plusDays(14) + "T02:00");
  }
}
