package gambrel.insight.cause;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** How one shop weighs: its unit, its scales, what they print, what its hooks and tubs weigh. */
final class ShopStyle {
  final boolean pounds;
  final int benches;
  final boolean leftRight;
  final boolean classed;
  final boolean hookKnown;
  final boolean trayTared;
  final ShopRow.Print bins;
  final long hook;
  final long binTare;
  final long trayTare;
  final int loss;
  final int bodies;

  /** By how many per cent of itself the share of a cut differs from body to body; of fat. */
  final int vary;

  final int varyFat;

  /** Whether each cut is packed in the same number of packs from every body. */
  final boolean samePacks;

  final List<Recipe> recipes = new ArrayList<>();

  ShopStyle(SplittableRandom random) {
    pounds = random.nextInt(5) == 0;
    benches = random.nextInt(3) == 0 ? 2 : 1;
    leftRight = random.nextBoolean();
    classed = random.nextBoolean();
    hookKnown = random.nextInt(3) > 0;
    trayTared = random.nextInt(3) == 0;
    bins = ShopRow.Print.values()[random.nextInt(3)];
    hook = shop(1_800 + random.nextInt(14) * 200L);
    binTare = shop(1_600 + random.nextInt(10) * 200L);
    trayTare = shop(150 + random.nextInt(8) * 50L);
    loss = 80 + random.nextInt(80);
    bodies = 10 + random.nextInt(51);
    vary = 3 + random.nextInt(6);
    varyFat = 6 + random.nextInt(13);
    samePacks = random.nextBoolean();
    int kinds = 1 + random.nextInt(3);
    for (int i = 0; i < kinds; i++) {
      recipes.add(Recipe.ALL.get(random.nextInt(Recipe.ALL.size())));
    }
  }

  /** Grams in thousandths of the shop's unit. */
  long shop(long grams) {
    return pounds ? Math.round(grams / 0.45359237) : grams;
  }

  /** A weight as a scale of this shop shows it. */
  long shown(String scale, long thousandths) {
    long division = division(scale);
    return (thousandths + division / 2) / division * division;
  }

  long division(String scale) {
    long grams = scale.equals("rail") ? 200 : scale.equals("bins") ? 20 : 5;
    return pounds ? grams * 5 / 2 : grams;
  }

  List<String> settings() {
    return List.of("name=Made Up", "currency=EUR", "unit=" + unit(), "zone=UTC", "region=au");
  }

  String unit() {
    return pounds ? "lb" : "kg";
  }

  List<String> scales() {
    var lines = new ArrayList<>(List.of("scale,division,capacity,class"));
    for (String scale : List.of("rail", "bins", "bench1", "bench2")) {
      long capacity = scale.equals("rail") ? 600 : scale.equals("bins") ? 150 : 30;
      lines.add(
          String.join(
              ",",
              scale,
              BigDecimal.valueOf(division(scale), 3).toPlainString(),
              Long.toString(pounds ? capacity * 2 : capacity),
              classed ? "III" : ""));
    }
    return lines;
  }

  String tareCell(String code) {
    boolean bin = code.startsWith("bin.") || code.startsWith("tub.");
    boolean rail = code.startsWith("hot.") || code.startsWith("cold.");
    long tare = bin ? binTare : rail && hookKnown ? hook : 0;
    return tare == 0 ? "" : BigDecimal.valueOf(tare, 3).toPlainString();
  }
}
