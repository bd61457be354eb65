package gambrel.pages.owner;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A made-up shop that kills three beef bodies every Monday and Wednesday from July 2025 to July
 * 2026 and cuts them a week later, the same for the same seed. Its chiller takes 2 % give or take
 * 0.3, its bench 1.2 % give or take 0.3, normally distributed and independent, until a fault is
 * planted.
 */
final class SteadyShop {
  static final String MONTH = "2026-07";
  static final String LATER = "2026-08-20T02:00:00Z";
  private static final LocalDate FIRST = LocalDate.of(2025, 7, 1);
  private static final LocalDate LAST = LocalDate.of(2026, 7, 20);

  private final SplittableRandom dice;
  private final SmallShop shop;
  private LocalDate chillerFails = LocalDate.MAX;
  private double chillerTakes;
  private LocalDate railDrifts = LocalDate.MAX;
  private LocalDate benchDrifts = LocalDate.MAX;
  private boolean twoBenches;
  private int bodies;

  SteadyShop(Path folder, long seed) {
    this.dice = new SplittableRandom(seed);
    this.shop = new SmallShop(folder);
    shop.add("values.csv", "item,value,from,to\nmince,10,,");
  }

  /** The chiller takes so many per cent more from a day on. */
  SteadyShop chillerTakes(double percent, String from) {
    chillerTakes = percent;
    chillerFails = LocalDate.parse(from);
    return this;
  }

  /** From a day on the rail scale reads 1 % light when cold bodies hang on it. */
  SteadyShop railReadsLight(String from) {
    railDrifts = LocalDate.parse(from);
    return this;
  }

  /** From a day on the bench scale reads heavier by 0.1 % a day. */
  SteadyShop benchDrifts(String from) {
    benchDrifts = LocalDate.parse(from);
    return this;
  }

  /** Every other body is cut at a second bench, whose scale stays right. */
  SteadyShop withTwoBenches() {
    twoBenches = true;
    shop.add("scales.csv", "bench2,0.02");
    return this;
  }

  SmallShop made() {
    for (var day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
      if (day.getDayOfWeek() == DayOfWeek.MONDAY || day.getDayOfWeek() == DayOfWeek.WEDNESDAY) {
        for (int i = 0; i < 3; i++) {
          body(day);
        }
      }
    }
    return shop;
  }

  private void body(LocalDate killed) {
    String body = String.format(Locale.ROOT, "K%04d", ++bodies);
    shop.beef(body, killed.toString(), dice.nextInt(3) == 0 ? "" : "c-ann");
    double hot = 280 + 60 * dice.nextDouble();
    double chill = 2 + 0.3 * dice.nextGaussian();
    if (!killed.isBefore(chillerFails)) {
      chill += chillerTakes;
    }
    double cold = hot * (100 - chill) / 100;
    double shown = killed.isBefore(railDrifts) ? cold : cold * 0.99;
    shop.hung(body, killed.toString(), text(hot), text(shown));
    cut(body, killed.plusDays(7), cold * (98.8 + 0.3 * dice.nextGaussian()) / 100);
  }

  private void cut(String body, LocalDate day, double out) {
    boolean second = twoBenches && bodies % 2 == 0;
    String scale = second ? "bench2" : "bench";
    long days = second ? 0 : Math.max(0, day.toEpochDay() - benchDrifts.toEpochDay());
    double read = out * (1 + days * 0.001);
    shop.row(scale, day + "T09:00", body, "mince", text(read * 0.75));
    shop.row(scale, day + "T09:30", body, "bone", text(read * 0.25));
  }

  private static String text(double weight) {
    return String.format(Locale.ROOT, "%.2f", weight);
  }
}
