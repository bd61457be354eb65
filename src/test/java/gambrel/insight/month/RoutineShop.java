package gambrel.insight.month;

import gambrel.insight.month.figures.MonthRecords;
import gambrel.scenes.Scene;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A made-up shop from January to March 2026, all its files for every kind of finding there is:
 * three steers on each of 25 days of kill, every third the shop's own, hung about eight days, boned
 * quarter by quarter by two boners, half of the loins on the bone, charged for, paid. March is like
 * January and February but by chance, normally distributed and independent, unless a fault is
 * planted.
 */
final class RoutineShop {
  /** Days of kill whose bodies are cut before March. */
  private static final int BEFORE = 16;

  /** Days of kill whose bodies are killed and cut in March. */
  private static final int IN_MARCH = 9;

  private static final int A_DAY = 3;
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final LocalDate MARCH = LocalDate.of(2026, 3, 2);
  private static final LocalDate CHANGED = LocalDate.of(2026, 3, 10);

  private final SplittableRandom dice;
  private final Scene scene;
  private final Fault fault;
  private final Map<LocalDate, Integer> onTheBench = new HashMap<>();
  private final List<RegisterRow> statements = new ArrayList<>();
  private int bodies;
  private int faulty;

  private RoutineShop(Path folder, long seed, Fault fault) {
    this.dice = new SplittableRandom(seed);
    this.fault = fault;
    String loin = fault == Fault.LOIN_ON_THE_BONE_IS_CHEAP ? "27" : "30";
    String wrapped = fault == Fault.WRAPPING_NOT_CHARGED ? "2026-02-28" : "";
    this.scene =
        Books.shop(folder)
            .file("bench.csv", "scale,from,to,body,batch,customer,boner")
            .file("batches.csv", "batch,product", "M1,Mince")
            .file("payments.csv", "customer,body,date,amount")
            .file(
                "values.csv",
                "item,value,from,to",
                "mince,12,,",
                "short-loin," + loin + ",,",
                "tenderloin,37.5,,",
                "striploin," + (fault == Fault.STRIPLOIN_IS_CHEAP ? "11" : "37.5") + ",,",
                "bone,0.2,,",
                "fat,0.1,,")
            .file(
                "charges.csv",
                "charge,description,basis,price,to",
                "kill,Slaughter,head,40,",
                "cut,Boning,boning,1.20,",
                "wrap,Wrapping,packed,0.25," + wrapped);
  }

  /** March, and what is known of it in the middle of April. */
  static MonthRecords march(Path folder, long seed, Fault fault) {
    return new RoutineShop(folder, seed, fault).march();
  }

  private MonthRecords march() {
    for (int day = 0; day < BEFORE; day++) {
      kill(FIRST.plusDays(2L * day));
    }
    for (int day = 0; day < IN_MARCH; day++) {
      kill(MARCH.plusDays(2L * day));
    }
    double out = fault == Fault.BATCH_LOSES ? 34 : 39.2;
    // Before the bench book has anybody at the bench, or the tub would be a body's.
    line("2026-03-27T05:00", "-", "tub trim", 40, " batch=M1");
    line("2026-03-27T05:30", "-", "pack mince", out, " batch=M1");
    return MonthRecords.of(
        Books.night(scene, "2026-04-30T00:00:00Z"),
        new Register(statements),
        YearMonth.of(2026, 3));
  }

  private void kill(LocalDate day) {
    for (int i = 0; i < A_DAY; i++) {
      body(day, i);
    }
  }

  /** The first bodies of March that a fault of single ones strikes; of all if it strikes all. */
  private boolean has(Fault which, LocalDate killed, int atMost) {
    boolean strikes = fault == which && !killed.isBefore(MARCH) && faulty < atMost;
    faulty += strikes ? 1 : 0;
    return strikes;
  }

  private void body(LocalDate killed, int place) {
    String id = String.format(Locale.ROOT, "R%03d", ++bodies);
    boolean own = place == 0;
    double hot = 220 + 12 * dice.nextGaussian();
    boolean late = own && has(Fault.OWN_BODIES_FORGOTTEN, killed, 2);
    int days = 8 + (int) Math.round(dice.nextGaussian()) + (late ? 14 : 0);
    double price = 6.5 + 0.1 * dice.nextGaussian();
    boolean dear = own && has(Fault.ONE_BODY_BOUGHT_TOO_DEAR, killed, 1);
    String supplier = dice.nextBoolean() ? "Hill" : "Vale";
    String category = dice.nextBoolean() ? "heifer" : "steer";
    boolean worse =
        is(Fault.HILLS_BODIES_DRESS_WORSE, killed) && supplier.equals("Hill")
            || is(Fault.HEIFERS_DRESS_WORSE, killed) && category.equals("heifer");
    double live = hot / (56 + dice.nextGaussian() - (worse ? 3 : 0)) * 100;
    String bought =
        own
            ? "shop," + supplier + "," + two(hot * price * (dear ? 3 : 1))
            : "ann," + supplier + ",";
    scene.body("%s,beef,%s,%s,%s,%s,,,".formatted(id, category, killed, bought, two(live)));
    double aged = hang(id, killed, days, hot);
    new Cutting(id, killed, killed.plusDays(days)).cut(aged);
    if (!own && killed.isBefore(MARCH)) {
      charged(id, killed.plusDays(days + 2L));
    }
  }

  private boolean is(Fault which, LocalDate killed) {
    return fault == which && !killed.isBefore(MARCH);
  }

  private double hang(String id, LocalDate killed, int days, double hot) {
    boolean changed = !killed.isBefore(CHANGED);
    double chill = 2 + 0.3 * dice.nextGaussian();
    chill += fault == Fault.CHILLER_TAKES_MORE && changed ? 1.5 : 0;
    chill += has(Fault.ONE_BODY_DRIES_OUT, killed, 1) ? 4 : 0;
    double cold = hot * (100 - chill) / 100;
    double aged = cold * (100 - 0.3 * days - 0.15 * dice.nextGaussian()) / 100;
    double reads = fault == Fault.RAIL_READS_LIGHT && changed ? 0.985 : 1;
    line(killed + "T10:00", id, "hot carcase", hot, "");
    line(killed.plusDays(1) + "T10:00", id, "cold carcase", cold * reads, "");
    line(killed.plusDays(days) + "T04:00", id, "aged carcase", aged * reads, "");
    return aged;
  }

  private void charged(String id, LocalDate issued) {
    boolean paid = fault != Fault.TWO_DO_NOT_PAY || statements.size() >= 2;
    if (paid) {
      scene.add("payments.csv", "ann,%s,%s,300.00".formatted(id, issued.plusDays(9)));
    }
    statements.add(
        new RegisterRow(
            "ann",
            id,
            1,
            LocalDateTime.of(issued.getYear(), issued.getMonth(), issued.getDayOfMonth(), 2, 0),
            Weight.ofThousandths(150_000),
            new Money(30_000),
            Money.ZERO,
            Money.ZERO,
            Optional.empty(),
            "statements/ann/" + id + "-r1.pdf",
            "",
            "",
            Optional.empty(),
            List.of()));
  }

  /** A body on the bench: each has two hours of its own, so that the bench book names one boner. */
  private final class Cutting {
    private final String id;
    private final LocalDate killed;
    private final LocalDate day;
    private final int hour;
    private final String boner;

    Cutting(String id, LocalDate killed, LocalDate day) {
      this.id = id;
      this.killed = killed;
      this.day = day;
      this.hour = 4 + 2 * onTheBench.merge(day, 1, Integer::sum);
      this.boner = (bodies + killed.getDayOfYear()) % 2 == 0 ? "Wyn" : "Dario";
    }

    private boolean is(Fault which) {
      return fault == which && !killed.isBefore(MARCH);
    }

    void cut(double aged) {
      scene.add(
          "bench.csv",
          "bench,%sT%02d:00,%sT%02d:59,%s,,,%s".formatted(day, hour, day, hour + 1, id, boner));
      quarters(aged);
      boolean changed = !killed.isBefore(CHANGED);
      double lost = 0.8 + 0.15 * dice.nextGaussian();
      lost += fault == Fault.BENCH_LOSES_MORE && changed ? 1.2 : 0;
      lost += has(Fault.ONE_PACK_NOT_WEIGHED, killed, 1) ? 2 : 0;
      boolean onTheBone = dice.nextBoolean();
      double loin = 5 + 0.15 * dice.nextGaussian();
      double packed = onTheBone ? loin : loin * 0.8;
      double bones = (onTheBone ? 13.5 : 16.5) + 0.8 * dice.nextGaussian();
      bones += is(Fault.WYN_LEAVES_MEAT_ON_THE_BONE) && boner.equals("Wyn") ? 2 : 0;
      double fats = 6 + 0.8 * dice.nextGaussian() + (is(Fault.MORE_FAT_TRIMMED_OFF) ? 2.5 : 0);
      loin(onTheBone, aged * packed / 100);
      at(1, 40, "pack mince", aged * (100 - lost - packed - bones - fats) / 100);
      at(1, 42, "bin fat", aged * fats / 100);
      if (!has(Fault.BINS_NOT_WEIGHED, killed, 3)) {
        at(1, 44, "bin bone", aged * bones / 100);
      }
    }

    private void quarters(double aged) {
      double minute = 0;
      for (var quarter : List.of("hindquarter", "hindquarter", "forequarter", "forequarter")) {
        at((int) minute / 60, (int) minute % 60, "block " + quarter, aged / 4);
        minute += (9 + dice.nextGaussian()) * (is(Fault.WORK_IS_SLOW) ? 1.3 : 1);
      }
    }

    private void loin(boolean onTheBone, double weight) {
      if (onTheBone) {
        at(1, 30, "pack t-bone", weight);
      } else {
        at(1, 30, "pack tenderloin", weight * 0.3);
        at(1, 31, "pack striploin", weight * 0.7);
      }
    }

    private void at(int hours, int minute, String what, double weight) {
      line("%sT%02d:%02d".formatted(day, hour + hours, minute), id, what, weight, "");
    }
  }

  private void line(String time, String id, String what, double weight, String more) {
    scene.weigh(time + " " + id + " " + what + " " + two(weight) + more);
  }

  private static String two(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }
}
