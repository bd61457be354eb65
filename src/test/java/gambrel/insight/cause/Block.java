package gambrel.insight.cause;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Cuts one body at one bench: packs in the order of the recipe, tubs and bins as they fill. */
final class Block {
  private final CleanShop shop;
  private final ShopStyle style;
  private final SplittableRandom random;
  private final String id;
  private final String bench;

  Block(CleanShop shop, SplittableRandom random, String id, String bench) {
    this.shop = shop;
    this.style = shop.style;
    this.random = random;
    this.id = id;
    this.bench = bench;
  }

  private record Piece(String code, long grams) {}

  /** Weighs so many grams in packs; returns the time of the last weighing. */
  LocalDateTime cut(long grams, LocalDateTime start) {
    var packs = new ArrayList<Piece>();
    var bins = new ArrayList<Piece>();
    divide(grams, packs, bins);
    var clock = start;
    for (int i = 0; i < packs.size(); i++) {
      clock = clock.plusSeconds(25 + random.nextInt(75));
      if (random.nextInt(90) == 0) {
        clock = clock.plusMinutes(15);
      }
      weigh(packs.get(i), clock);
      int due = (i + 1) * bins.size() / packs.size() - i * bins.size() / packs.size();
      for (int b = 0; b < due; b++) {
        weigh(bins.remove(0), clock.plusSeconds(10 + 30L * b));
      }
    }
    for (var bin : List.copyOf(bins)) {
      clock = clock.plusSeconds(40);
      weigh(bin, clock);
    }
    return mince(clock);
  }

  private void divide(long grams, List<Piece> packs, List<Piece> bins) {
    var parts = shop.bodies.get(id).parts();
    var shares = new ArrayList<Long>();
    for (var part : parts) {
      shares.add(Math.round(part.share() * Math.max(20, 100 + random.nextGaussian() * vary(part))));
    }
    long all = shares.stream().mapToLong(s -> s).sum();
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      long of = grams * shares.get(i) / all;
      var pieces = split(part, of);
      (part.code().startsWith("pack.") ? packs : bins).addAll(pieces);
    }
  }

  private int vary(Recipe.Part part) {
    return part.code().endsWith(".fat") ? style.varyFat : style.vary;
  }

  private List<Piece> split(Recipe.Part part, long grams) {
    var hot = shop.bodies.get(id).hot();
    boolean same = style.samePacks && part.share() > 0;
    long usual = same ? (hot[0] + hot[1]) / 2L * part.share() / 10_000 : grams;
    int number = (int) Math.max(1, Math.round((double) usual / part.pack()));
    var pieces = new ArrayList<Piece>();
    long left = grams;
    for (int n = number; n > 1; n--) {
      long one = left / n * (880 + random.nextInt(241)) / 1000;
      pieces.add(new Piece(part.code(), one));
      left -= one;
    }
    pieces.add(new Piece(part.code(), left));
    return pieces;
  }

  private void weigh(Piece piece, LocalDateTime time) {
    boolean pack = piece.code().startsWith("pack.");
    String scale = pack ? bench : "bins";
    long net = style.shown(scale, style.shop(piece.grams()));
    var print = pack ? (style.trayTared ? ShopRow.Print.ALL : ShopRow.Print.NET) : style.bins;
    long tare = pack ? (style.trayTared ? style.trayTare : 0) : style.binTare;
    var row = new ShopRow(scale, time, id, piece.code(), net, print, tare);
    row.batch = piece.code().startsWith("tub.") ? "M" + id.substring(1) : "";
    shop.rows.add(row);
  }

  /** Minces and packs the meat of the tubs when the body is cut. */
  private LocalDateTime mince(LocalDateTime end) {
    String batch = "M" + id.substring(1);
    long meat = shop.rows.stream().filter(r -> r.batch.equals(batch)).mapToLong(r -> r.net).sum();
    var clock = end;
    if (meat > 0) {
      long out = meat * (980 + random.nextInt(15)) / 1000;
      clock = clock.plusMinutes(12);
      for (var piece : split(new Recipe.Part("pack.mince", 0, (int) style.shop(1000)), out)) {
        clock = clock.plusSeconds(20 + random.nextInt(20));
        var row = new ShopRow(bench, clock, "", piece.code(), style.shown(bench, piece.grams()));
        row.batch = batch;
        shop.rows.add(row);
      }
    }
    return clock;
  }
}
