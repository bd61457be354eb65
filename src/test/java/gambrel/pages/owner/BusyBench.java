package gambrel.pages.owner;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** Kills, hangs, cuts and charges the busy shop's bodies, by dice. */
final class BusyBench {
  static final double POUNDS = 1 / 0.45359237;

  private static final String[] SPECIES = {"beef", "beef", "lamb", "pork"};
  private static final Map<String, Double> HOT = Map.of("beef", 270.0, "lamb", 23.0, "pork", 78.0);
  private static final Map<String, String[]> CLASSES =
      Map.of(
          "beef", new String[] {"steer", "heifer", "cow"},
          "lamb", new String[] {"lamb", "hogget"},
          "pork", new String[] {"baconer"});
  private static final String[] OWNERS = {"c-ann", "c-bob", "", "c-trust"};
  private static final String[] SUPPLIERS = {"Hill Farm", "Vale Farm", "Moor Farm"};
  private static final LocalDate FAULT = LocalDate.of(2026, 12, 10);
  private static final LocalDate PAID_BEFORE = LocalDate.of(2026, 11, 20);
  private static final int MINUTES_A_QUARTER = 7;

  private final SmallShop shop;
  private final SplittableRandom dice;
  private final double unit;
  private final List<Row> rows = new ArrayList<>();
  private final Map<String, LocalDateTime> free = new HashMap<>();
  private final Map<LocalDate, Double> tubs = new TreeMap<>();

  private record Row(
      String scale, String time, String body, String code, String net, String batch) {}

  BusyBench(SmallShop shop, SplittableRandom dice, boolean american) {
    this.shop = shop;
    this.dice = dice;
    this.unit = american ? POUNDS : 1;
  }

  /** One body from its kill to its bill. */
  void body(int number, LocalDate killed) {
    String id = String.format(Locale.ROOT, "K%04d", number);
    String species = number == 0 ? "beef" : SPECIES[dice.nextInt(SPECIES.length)];
    var classes = CLASSES.get(species);
    String kind = classes[dice.nextInt(classes.length)];
    double hot = HOT.get(species) * unit * (1 + 0.08 * dice.nextGaussian());
    boolean late = !killed.isBefore(FAULT);
    double cold = hot * (1 - (2 + 0.25 * dice.nextGaussian() + (late ? 1.2 : 0)) / 100);
    String owner = OWNERS[dice.nextInt(OWNERS.length)];
    write(id, species, kind, killed, hot, cold, owner);
    row("rail", killed + "T08:00", id, "hot", half(hot), "");
    if (number % 41 != 40) {
      row("rail", killed.plusDays(1) + "T07:00", id, "cold", half(cold), "");
    }
    int days = species.equals("beef") ? 4 + dice.nextInt(15) : 2 + dice.nextInt(3);
    double aged = cold;
    if (species.equals("beef") && days > 6) {
      aged = cold * (1 - (0.3 * days + 0.2 * dice.nextGaussian()) / 100);
      row("rail", killed.plusDays(days) + "T06:30", id, "aged", half(aged), "");
    }
    cut(number, id, species, killed.plusDays(days), aged);
    pay(number, id, species, killed.plusDays(days), cold, days, owner);
  }

  private void write(
      String id,
      String species,
      String kind,
      LocalDate killed,
      double hot,
      double cold,
      String owner) {
    double price = species.equals("beef") ? 8.2 : 9.5;
    String bought =
        owner.isEmpty()
            ? SUPPLIERS[dice.nextInt(3)]
                + ","
                + two(cold / unit * price * (1 + 0.1 * dice.nextGaussian()))
            : ",";
    shop.add(
        "bodies.csv",
        String.join(
            ",",
            id,
            species,
            kind,
            killed.toString(),
            dice.nextInt(12) == 0 ? "" : two(hot / (species.equals("beef") ? 0.55 : 0.48)),
            species.equals("beef") ? "" + (2 + dice.nextInt(18)) : "",
            owner,
            bought,
            id.hashCode() % 2 == 0 ? "north" : "south"));
  }

  private void cut(int number, String id, String species, LocalDate day, double weight) {
    String scale = "bench" + (1 + number % 3);
    boolean beef = species.equals("beef");
    boolean onTheBone = dice.nextBoolean();
    boolean wyn = number % 3 == 0 && !day.isBefore(FAULT);
    if (beef) {
      quarters(scale, id, day, weight);
    }
    double lost = number % 23 == 22 ? 8 : 1 + 0.25 * dice.nextGaussian();
    double bone = (beef ? onTheBone ? 14 : 17 : 13) + 0.7 * dice.nextGaussian() + (wyn ? 2 : 0);
    double fat = (beef ? 7 : 3) + dice.nextGaussian();
    double left = 100 - lost - bone - fat;
    for (var cut : BusyCuts.of(species, onTheBone)) {
      double percent = cut.percent() * (1 + 0.04 * dice.nextGaussian());
      left -= percent;
      weigh(scale, day, id, cut.item(), weight * percent / 100);
    }
    if (beef && number % 3 == 0) {
      left -= 4;
      tub(scale, day, id, weight * 4 / 100);
    }
    weigh(scale, day, id, "mince", weight * left / 100);
    weigh(scale, day, id, "bone", weight * bone / 100);
    weigh(scale, day, id, "fat", weight * fat / 100);
    if (dice.nextInt(3) == 0) {
      weigh(scale, day, id, "liver", weight / 50);
    }
  }

  private void quarters(String scale, String id, LocalDate day, double weight) {
    for (var quarter : new String[] {"hindquarter", "forequarter"}) {
      for (int i = 0; i < 2; i++) {
        weigh(scale, day, id, quarter, weight / 4);
        wait(scale, day, (int) (60 * (MINUTES_A_QUARTER + dice.nextGaussian())));
      }
    }
  }

  private void tub(String scale, LocalDate day, String id, double weight) {
    var monday = day.minusDays(day.getDayOfWeek().getValue() - 1L);
    row(scale, wait(scale, day, 15), id, "trim", two(weight), batch(monday));
    tubs.merge(monday, weight, Double::sum);
  }

  /** Packs every week's sausages; the first of December 2026 lose more than the limit. */
  void finish() {
    for (var tub : tubs.entrySet()) {
      var monday = tub.getKey();
      double left = monday.equals(LocalDate.of(2026, 12, 7)) ? 0.88 : 0.97;
      shop.add("batches.csv", batch(monday) + ",Sausages,");
      row(
          "bench1",
          monday.plusDays(7) + "T06:00",
          "",
          "sausages",
          two(tub.getValue() * left),
          batch(monday));
    }
    rows.sort(Comparator.comparing(Row::time));
    rows.forEach(r -> shop.row(r.scale, r.time, r.body, r.code, r.net, r.batch));
  }

  /** Kept until all are there: tickets count in order of time. */
  private void row(String scale, String time, String body, String code, String net, String batch) {
    rows.add(new Row(scale, time, body, code, net, batch));
  }

  private static String batch(LocalDate monday) {
    return "S" + monday.toString().replace("-", "");
  }

  private void pay(
      int number, String id, String species, LocalDate day, double cold, int days, String owner) {
    if (!owner.isEmpty() && day.isBefore(PAID_BEFORE) && number % 29 != 3) {
      double weighed = Math.round(cold * 2) / 2.0;
      double due = 60 + 1.1 * weighed + (species.equals("beef") ? 2 * days : 0);
      shop.add("payments.csv", String.join(",", owner, id, day.plusDays(20).toString(), two(due)));
    }
  }

  private void weigh(String scale, LocalDate day, String id, String code, double weight) {
    row(scale, wait(scale, day, 15), id, code, two(Math.round(weight * 50) / 50.0), "");
  }

  /** The moment at which a bench is free, and takes that many seconds of it. */
  private String wait(String scale, LocalDate day, int seconds) {
    String key = scale + day;
    var now = free.getOrDefault(key, day.atTime(7, 0));
    free.put(key, now.plusSeconds(seconds));
    return now.withSecond(0).toString();
  }

  private static String half(double weight) {
    return String.format(Locale.ROOT, "%.1f", Math.round(weight * 2) / 2.0);
  }

  private static String two(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
