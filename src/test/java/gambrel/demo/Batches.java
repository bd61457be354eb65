package gambrel.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What becomes of the tubs: mince, sausages, hams, bacon. */
final class Batches {
  private final Floor floor;
  private final Map<String, Batch> batches = new LinkedHashMap<>();

  Batches(Floor floor) {
    this.floor = floor;
  }

  /** A batch on its way, in grams. */
  private static final class Batch {
    final Beast first;
    final LocalDate made;
    final Product product;
    long meat;
    boolean packed;

    Batch(Beast first, LocalDate made, Product product) {
      this.first = first;
      this.made = made;
      this.product = product;
    }
  }

  /** Tips a tub of a body's meat into a batch, which it begins if need be. */
  void tip(Beast beast, Product product, Shift shift, LocalDate day, long grams, Dice dice) {
    String id = id(beast, product);
    for (long tub : Packs.split(grams, (int) (grams / 24_000) + 1, dice)) {
      floor
          .bench2
          .weighGross(shift.after(dice.between(60, 150)), product.tub, tub + product.tare)
          .body(beast.id())
          .batch(id);
    }
    batches.computeIfAbsent(id, k -> new Batch(beast, day, product)).meat += grams;
  }

  private static String id(Beast beast, Product product) {
    String number = beast.is("mixed") && product == Product.SAUSAGES ? "500" : beast.number();
    return product.letter + number;
  }

  /** Packs what was made of a body's meat on the day itself; a mixed batch when both are in. */
  void packSameDay(Beast beast, Shift shift) {
    batches.forEach(
        (id, batch) -> {
          boolean complete = !id.endsWith("500") || batch.first != beast;
          boolean mine = id.endsWith(beast.number()) || id.endsWith("500");
          if (mine && complete && batch.product.days == 0 && !batch.packed) {
            pack(id, batch, shift);
          }
        });
  }

  /** Packs what came out of brine, cure and smoke. */
  void packCured() {
    batches.forEach(
        (id, batch) -> {
          if (batch.product.days > 0 && !batch.first.is("indue")) {
            pack(id, batch, floor.boning(batch.made.plusDays(batch.product.days)));
          } else if (batch.product.days > 0) {
            add(id, batch, floor.boning(batch.made), new Dice("batch" + id));
          }
        });
  }

  private void pack(String id, Batch batch, Shift shift) {
    var dice = new Dice("batch" + id);
    long all = batch.meat + add(id, batch, floor.boning(batch.made), dice);
    long out = all * dice.around(batch.product.leastOut, batch.product.mostOut) / 1000;
    boolean gains = batch.product == Product.HAM && !batch.first.is("brine");
    shift.after(600);
    for (long pack : packs(batch, gains ? out * 110 / 100 : out, dice)) {
      String code = batch.product.pack(batch.first.species());
      floor.bench1.weigh(shift.after(dice.between(20, 45)), code, pack).batch(id);
    }
    batch.packed = true;
  }

  private static List<Long> packs(Batch batch, long out, Dice dice) {
    int size = batch.product == Product.MINCE ? batch.first.mincePack() : 1;
    return Packs.of(out, size * batch.product.low, size * batch.product.high, dice);
  }

  private long add(String id, Batch batch, Shift shift, Dice dice) {
    long sum = 0;
    for (var added : batch.product.added(batch.first).entrySet()) {
      long grams = batch.meat * added.getValue() / 1000;
      floor.bench2.weigh(shift.after(dice.between(40, 90)), added.getKey(), grams).batch(id);
      sum += grams;
    }
    return sum;
  }

  /** The shop's list of its batches. */
  String list() {
    var lines = new ArrayList<>(List.of("batch,product,made,gain,due,added,note"));
    batches.forEach(
        (id, batch) -> {
          if (!batch.first.is("unlisted")) {
            lines.add(line(id, batch));
          }
        });
    return String.join("\n", lines) + "\n";
  }

  private static String line(String id, Batch batch) {
    var product = batch.product;
    boolean gains = product == Product.HAM && !batch.first.is("brine");
    String due = product.days == 0 ? "" : batch.made.plusDays(21).toString();
    return String.join(
        ",",
        id,
        product.named(batch.first.species()),
        batch.made.toString(),
        gains ? "yes" : "",
        due,
        product.declared,
        "");
  }
}
