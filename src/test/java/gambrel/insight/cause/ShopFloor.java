package gambrel.insight.cause;

import gambrel.Shuffle;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/** Kills, hangs and cuts the bodies of a shop, a few a week. */
final class ShopFloor {
  private static final List<String> SIDES = List.of("left-side", "right-side");

  private final CleanShop shop;
  private final ShopStyle style;
  private final SplittableRandom random;
  private final Map<String, LocalDateTime> free = new HashMap<>();

  ShopFloor(CleanShop shop, SplittableRandom random) {
    this.shop = shop;
    this.style = shop.style;
    this.random = random;
  }

  void work(LocalDate first) {
    var day = first;
    int left = style.bodies;
    while (left > 0) {
      int today = Math.min(left, 1 + random.nextInt(6));
      killAndCut(day, today);
      left -= today;
      day = day.plusDays(2 + random.nextInt(2));
    }
  }

  private void killAndCut(LocalDate day, int number) {
    var ids = new ArrayList<String>();
    for (int i = 0; i < number; i++) {
      var recipe = style.recipes.get(random.nextInt(style.recipes.size()));
      String id =
          recipe.species().substring(0, 1).toUpperCase(Locale.ROOT) + (101 + shop.bodies.size());
      shop.bodies.put(id, recipe);
      shop.killed.put(id, day);
      ids.add(id);
    }
    var hot = new HashMap<String, List<Long>>();
    var clock = day.atTime(8, 0);
    for (String id : ids) {
      clock = clock.plusMinutes(12 + random.nextInt(25));
      hot.put(id, hang(id, "hot", grams(shop.bodies.get(id)), clock));
    }
    chillAndCut(day, ids, hot);
  }

  private long grams(Recipe recipe) {
    return (long) recipe.hot()[0] + random.nextInt(recipe.hot()[1] - recipe.hot()[0]);
  }

  private List<Long> hang(String id, String step, long grams, LocalDateTime clock) {
    boolean sides = shop.bodies.get(id).sides();
    long left = sides ? grams * (493 + random.nextInt(15)) / 1000 : grams;
    var parts = sides ? List.of(left, grams - left) : List.of(grams);
    return weighRail(id, step, parts, clock);
  }

  private List<Long> weighRail(String id, String step, List<Long> parts, LocalDateTime clock) {
    for (int i = 0; i < parts.size(); i++) {
      String item = parts.size() == 1 ? "carcase" : style.leftRight ? SIDES.get(i) : "side";
      long net = style.shown("rail", style.shop(parts.get(i)));
      shop.rows.add(new ShopRow("rail", clock.plusSeconds(40L * i), id, step + "." + item, net));
    }
    return parts;
  }

  private void chillAndCut(LocalDate day, List<String> ids, Map<String, List<Long>> hot) {
    int ofDay = random.nextInt(41) - 20;
    var order = new ArrayList<>(ids);
    if (random.nextBoolean()) {
      Shuffle.inPlace(order, random);
    }
    var clock = day.plusDays(1).atTime(6, 5);
    var cutting = day.plusDays(2 + random.nextInt(2));
    for (String id : order) {
      clock = clock.plusSeconds(70 + random.nextInt(120));
      long shrink = shop.bodies.get(id).chill() + ofDay + random.nextInt(31) - 15L;
      var cold = hot.get(id).stream().map(g -> g - g * shrink / 10_000).toList();
      weighRail(id, "cold", cold, clock);
      clock = clock.plusSeconds(60);
      cut(id, cold.stream().mapToLong(g -> g).sum(), cutting);
    }
  }

  private void cut(String id, long grams, LocalDate day) {
    String bench = "bench" + (1 + random.nextInt(style.benches));
    var clock = free.getOrDefault(bench, day.atTime(6, 30));
    if (clock.toLocalDate().isBefore(day) || clock.getHour() >= 15) {
      boolean before = clock.toLocalDate().isBefore(day);
      clock = (before ? day : clock.toLocalDate().plusDays(1)).atTime(6, 30);
    }
    clock = clock.plusSeconds(240 + random.nextInt(480));
    long loss = Math.max(40, Math.min(220, style.loss + Math.round(random.nextGaussian() * 25)));
    free.put(bench, new Block(shop, random, id, bench).cut(grams - grams * loss / 10_000, clock));
  }
}
