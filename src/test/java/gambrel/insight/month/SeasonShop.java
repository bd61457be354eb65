package gambrel.insight.month;

import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.scenes.Scene;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A made-up shop from January to July 2026, about fifty bodies a month: steers and heifers killed
 * on Mondays and Wednesdays, lambs on Thursdays, of three suppliers, in two chillers, boned by
 * three boners, a third of them the shop's own, with two batches a week. Shops differ in what is
 * weighed on which scale and in whether beef is weighed again after hanging. From June on a fault
 * may be planted. All numbers are made up.
 */
final class SeasonShop {
  /** What is wrong from June on. */
  enum Wrong {
    NOTHING,
    CHILLER_B,
    WYN,
    SCALE_LIGHT,
    MOOR_DRESSES_WORSE,
    HEIFERS_DRESS_WORSE,
    HANGS_TOO_LONG,
    HANGS_TOO_LONG_UNWEIGHED,
    BATCHES_LOSE_DOUBLE,
    BENCH_LOSES_MORE,
    CUT_BELOW_TRIM,
    LATE_TO_THE_CHILLER,
    RAIL_LIGHT
  }

  static final YearMonth FIRST = YearMonth.of(2026, 1);
  static final YearMonth CHANGED = YearMonth.of(2026, 6);
  static final YearMonth LAST = YearMonth.of(2026, 7);
  private static final List<String> BONERS = List.of("Wyn", "Dario", "Noor");
  private static final List<String> SUPPLIERS = List.of("Hill", "Vale", "Moor");

  private final SplittableRandom dice;
  private final Scene scene;
  private final Wrong wrong;
  private final boolean beefIsAged;
  private final boolean twoBenches;
  private int bodies;
  private int minutes;
  private int benchMinutes;
  private LocalDate cutDay = LocalDate.MIN;

  private SeasonShop(Path folder, long seed, Wrong wrong) {
    this.dice = new SplittableRandom(seed);
    this.wrong = wrong;
    this.beefIsAged = wrong != Wrong.HANGS_TOO_LONG_UNWEIGHED && dice.nextBoolean();
    this.twoBenches = wrong == Wrong.SCALE_LIGHT || dice.nextBoolean();
    this.scene =
        new Scene(folder)
            .file(
                "bodies.csv",
                "body,species,class,killed,customer,supplier,cost,live_weight,chiller")
            .file("scales.csv", "scale,division", "rail,0.1", "bench,0.01", "bench2,0.01")
            .file("bench.csv", "scale,from,to,body,batch,customer,boner")
            .file("batches.csv", "batch,product")
            .set("limit.cutting_loss_pct=6")
            .file(
                "values.csv",
                "item,value,from,to",
                "mince,12,,",
                "rump,25,,",
                "brisket,14,,2026-05-31",
                "brisket," + (wrong == Wrong.CUT_BELOW_TRIM ? "10" : "14") + ",2026-06-01,",
                "tenderloin,37.5,,",
                "striploin,37.5,,",
                "leg,20,,",
                "shoulder,16,,",
                "bone,0.2,,",
                "fat,0.1,,");
  }

  static Night night(Path folder, long seed, Wrong wrong) {
    var shop = new SeasonShop(folder, seed, wrong);
    shop.live();
    return Books.night(shop.scene, "2026-08-25T00:00:00Z");
  }

  static MonthReport report(Night night, List<MonthBody> bodies, YearMonth month) {
    return MonthReport.of(
        MonthRecords.of(bodies, night, new Register(List.of()), List.of(), month));
  }

  private boolean is(Wrong which, LocalDate day) {
    return wrong == which && !day.isBefore(CHANGED.atDay(1));
  }

  private void live() {
    for (var day = FIRST.atDay(5); !day.isAfter(LAST.atEndOfMonth()); day = day.plusDays(1)) {
      double today = 0.08 * dice.nextGaussian();
      int beef =
          day.getDayOfWeek() == DayOfWeek.MONDAY
              ? 4
              : day.getDayOfWeek() == DayOfWeek.WEDNESDAY ? 3 : 0;
      for (int i = 0; i < beef; i++) {
        beef(day, today);
      }
      for (int i = 0; i < 5 && day.getDayOfWeek() == DayOfWeek.THURSDAY; i++) {
        lamb(day, today);
      }
      if (day.getDayOfWeek() == DayOfWeek.TUESDAY || day.getDayOfWeek() == DayOfWeek.FRIDAY) {
        batch(day);
      }
    }
  }

  private void batch(LocalDate day) {
    boolean mince = dice.nextBoolean();
    String id = "M" + day.toString().replace("-", "");
    scene.add("batches.csv", id + "," + (mince ? "Mince" : "Sausage"));
    double in = 20 + 15 * dice.nextDouble();
    double lost = mince ? 1.2 + 0.4 * dice.nextGaussian() : 2.5 + 0.6 * dice.nextGaussian();
    lost = Math.max(0.1, lost) * (is(Wrong.BATCHES_LOSE_DOUBLE, day) ? 2 : 1);
    line(day + "T04:00", "-", "tub trim", in, " batch=" + id);
    line(day + "T04:30", "-", "pack mince", in * (1 - lost / 100), " batch=" + id);
  }

  private double more() {
    return dice.nextGaussian();
  }

  private void beef(LocalDate killed, double today) {
    String id = String.format(Locale.ROOT, "R%03d", ++bodies);
    boolean heifer = dice.nextInt(3) == 0;
    String supplier = SUPPLIERS.get(dice.nextInt(3));
    double dressing = 56 + 1.3 * more() - (heifer ? 1 : 0);
    dressing -= supplier.equals("Moor") && is(Wrong.MOOR_DRESSES_WORSE, killed) ? 2.5 : 0;
    dressing -= heifer && is(Wrong.HEIFERS_DRESS_WORSE, killed) ? 2.5 : 0;
    double hot = 230 + 20 * more();
    String chiller =
        register(id, "beef", heifer ? "heifer" : "steer", killed, supplier, hot, dressing);
    double cold = chill(id, killed, hot, chiller, 1.8 + today, 0.25);
    int days = 8 + dice.nextInt(4);
    days += is(Wrong.HANGS_TOO_LONG, killed) || is(Wrong.HANGS_TOO_LONG_UNWEIGHED, killed) ? 8 : 0;
    double hung = (0.2 + 0.02 * more()) * days + 0.1 * more();
    var cut = killed.plusDays(days);
    double aged = cold * (1 - hung / 100);
    if (beefIsAged) {
      line(cut + "T03:00", id, "aged carcase", aged * rail(cut), "");
    }
    cut(id, cut, aged, true);
  }

  private void lamb(LocalDate killed, double today) {
    String id = String.format(Locale.ROOT, "L%03d", ++bodies);
    String supplier = SUPPLIERS.get(dice.nextInt(3));
    double dressing = 47 + 1.3 * more();
    dressing -= supplier.equals("Moor") && is(Wrong.MOOR_DRESSES_WORSE, killed) ? 2.5 : 0;
    double hot = 21 + 1.5 * more();
    String chiller = register(id, "lamb", "lamb", killed, supplier, hot, dressing);
    double cold = chill(id, killed, hot, chiller, 2.4 + today, 0.35);
    int days = 2 + dice.nextInt(4);
    cut(id, killed.plusDays(days), cold * (1 - 0.25 * days / 100), false);
  }

  private String register(
      String id,
      String species,
      String category,
      LocalDate killed,
      String supplier,
      double hot,
      double dressing) {
    String chiller = dice.nextBoolean() ? "A" : "B";
    boolean own = dice.nextInt(3) == 0;
    double cost = hot * (6.5 + 0.2 * more());
    scene.body(
        String.join(
            ",",
            id,
            species,
            category,
            killed.toString(),
            own ? "shop" : "ann",
            supplier,
            own ? two(cost) : "",
            two(hot / dressing * 100),
            chiller));
    return chiller;
  }

  private double rail(LocalDate day) {
    return is(Wrong.RAIL_LIGHT, day) ? 0.995 : 1;
  }

  private double chill(
      String id, LocalDate killed, double hot, String chiller, double usual, double spread) {
    int late = is(Wrong.LATE_TO_THE_CHILLER, killed) && dice.nextInt(4) == 0 ? 8 : 0;
    double chill = usual + spread * more() + 0.1 * late;
    chill *= chiller.equals("B") && is(Wrong.CHILLER_B, killed) ? 1.5 : 1;
    double cold = hot * (1 - chill / 100);
    int at = minutes++ % 50;
    line("%sT10:%02d".formatted(killed, at), id, "hot carcase", hot, "");
    line(
        "%sT%02d:%02d".formatted(killed.plusDays(1), 8 + late, at),
        id,
        "cold carcase",
        cold * rail(killed),
        "");
    return cold;
  }

  private void cut(String id, LocalDate day, double weight, boolean beef) {
    String boner = BONERS.get(dice.nextInt(3));
    // Bodies of one day stand after each other in the bench book, each for half an hour.
    benchMinutes = day.equals(cutDay) ? benchMinutes + 30 : 0;
    cutDay = day;
    int start = 5 * 60 + (bodies % 34) * 30;
    String scale = twoBenches && dice.nextBoolean() ? "bench2" : "bench";
    for (var one : List.of("bench", "bench2")) {
      scene.add(
          "bench.csv",
          "%s,%sT%s,%sT%s,%s,,,%s"
              .formatted(one, day, clock(start), day, clock(start + 29), id, boner));
    }
    double lost = (beef ? 0.7 : 1.2) * Math.exp(0.25 * more());
    lost += is(Wrong.BENCH_LOSES_MORE, day) ? 0.5 : 0;
    boolean onTheBone = beef && dice.nextBoolean();
    double loin = onTheBone ? 5 : 4;
    double bones = (beef ? onTheBone ? 13.5 : 15 : 20) + 0.9 * more();
    bones += boner.equals("Wyn") && is(Wrong.WYN, day) ? 1.5 : 0;
    double fats = Math.max(0.5, (beef ? 7 : 4) + 0.9 * more());
    double first = beef ? 6 + 0.3 * more() : 30 + more();
    double second = beef ? 4 + 0.3 * more() : 25 + more();
    pack(day, start, id, scale, "pack " + (beef ? "rump" : "leg"), weight * first / 100);
    pack(
        day,
        start + 3,
        id,
        scale,
        "pack " + (beef ? "brisket" : "shoulder"),
        weight * second / 100);
    if (beef && onTheBone) {
      pack(day, start + 5, id, scale, "pack t-bone", weight * loin / 100);
    } else if (beef) {
      pack(day, start + 5, id, scale, "pack tenderloin", weight * loin * 0.3 / 100);
      pack(day, start + 6, id, scale, "pack striploin", weight * loin * 0.7 / 100);
    }
    double rest = 100 - lost - bones - fats - first - second - (beef ? loin : 0);
    pack(day, start + 10, id, scale, "pack mince", weight * rest / 100);
    String bins = twoBenches ? scale : "bench2";
    pack(day, start + 20, id, bins, "bin bone", weight * bones / 100);
    pack(day, start + 22, id, bins, "bin fat", weight * fats / 100);
  }

  private static String clock(int minutes) {
    return "%02d:%02d".formatted(minutes / 60, minutes % 60);
  }

  private void pack(
      LocalDate day, int minute, String id, String scale, String what, double weight) {
    boolean light = scale.equals("bench2") && is(Wrong.SCALE_LIGHT, day);
    line(day + "T" + clock(minute), id, what, weight * (light ? 0.997 : 1), " scale=" + scale);
  }

  private void line(String time, String id, String what, double weight, String more) {
    scene.weigh(time + " " + id + " " + what + " " + two(weight) + more);
  }

  private static String two(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }
}
