package gambrel.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The boning room: a body comes off the rail and leaves in packs, tubs and bins. */
final class Boning {
  private static final int BIN_TARE = 2_400;

  private final Floor floor;
  private final Batches batches;
  private final Blocks blocks;

  Boning(Floor floor, Batches batches) {
    this.floor = floor;
    this.batches = batches;
    this.blocks = new Blocks(floor);
  }

  /** A part with what it weighs, in grams. */
  private record Cut(Part part, long grams) {}

  /** Cuts a body that weighs so many grams. */
  void cut(Beast beast, long weight) {
    blocks.comes(beast, weight);
    var dice = new Dice("boning" + beast.id());
    var cuts = divide(beast, weight, dice);
    int first = beast.cut().size() > 1 || beast.is("partcut") ? cuts.size() / 2 : cuts.size();
    work(beast, cuts.subList(0, first), beast.cut().get(0), dice);
    if (beast.cut().size() > 1) {
      work(beast, cuts.subList(first, cuts.size()), beast.cut().get(1), dice);
    }
  }

  private static List<Cut> divide(Beast beast, long weight, Dice dice) {
    boolean beef = beast.species().equals("beef");
    int loss = beef ? dice.around(8, 52) : dice.around(45, 105);
    long rest = weight - weight * loss / 10_000;
    var shares = Recipes.of(beast).stream().map(p -> p.share(varied(p, dice))).toList();
    long sum = shares.stream().mapToLong(Part::share).sum();
    var cuts = new ArrayList<Cut>();
    for (var part : shares) {
      cuts.add(new Cut(part, rest * part.share() / sum));
    }
    return cuts;
  }

  private static int varied(Part part, Dice dice) {
    boolean most = part.share() > 1000;
    return (int) dice.vary(part.share() * 10L, most ? 40 : 90);
  }

  private void work(Beast beast, List<Cut> cuts, LocalDate day, Dice dice) {
    blocks.weigh(beast, day);
    var shift = floor.boning(day);
    shift.after(dice.between(420, 780));
    if (beast.is("block")) {
      block(beast, cuts, shift, dice);
    }
    for (var cut : cuts) {
      take(beast, cut, shift, day, dice);
    }
    batches.packSameDay(beast, shift);
    if (beast.is("saus")) {
      cartons(beast, shift, dice);
    }
  }

  private void block(Beast beast, List<Cut> cuts, Shift shift, Dice dice) {
    long all = cuts.stream().mapToLong(Cut::grams).sum();
    for (long hindquarter : Packs.split(all * 485 / 1000, 2, dice)) {
      // Heavier than the bench carries, so the rail weighs it on its way to the block.
      weigh(floor.rail, shift, dice, "201", hindquarter).body(beast.id());
    }
    long rump = cuts.stream().filter(c -> c.part().code().equals("308")).findAny().get().grams();
    for (long piece : Packs.split(rump * 122 / 100, 2, dice)) {
      weigh(floor.bench2, shift, dice, "202", piece).body(beast.id());
    }
  }

  private void take(Beast beast, Cut cut, Shift shift, LocalDate day, Dice dice) {
    var part = cut.part();
    switch (part.way()) {
      case PACK -> pack(floor.bench1, beast, cut, shift, dice);
      case BIG -> pack(floor.bench2, beast, cut, shift, dice);
      case EACH -> {
        for (long pack : Packs.split(cut.grams(), part.low() * beast.head(), dice)) {
          weigh(floor.bench1, shift, dice, part.code(), pack).body(beast.id()).pieces(part.most());
        }
      }
      case TRIM -> trim(beast, cut, shift, day, dice);
      case CURE -> {
        var product = part.code().equals("853") ? Product.HAM : Product.BACON;
        batches.tip(beast, product, shift, day, cut.grams(), dice);
      }
      case BIN -> bin(beast, cut, shift, dice);
    }
  }

  private void pack(ScaleBook scale, Beast beast, Cut cut, Shift shift, Dice dice) {
    var part = cut.part();
    for (long pack : Packs.of(cut.grams(), part.low(), part.high(), dice)) {
      var row = weigh(scale, shift, dice, part.code(), pack).body(beast.id());
      if (part.most() > 0) {
        row.pieces(dice.between(part.fewest(), part.most()));
      }
    }
  }

  private void trim(Beast beast, Cut cut, Shift shift, LocalDate day, Dice dice) {
    boolean sausages = beast.is("saus") || beast.is("mixed");
    boolean pork = beast.species().equals("pork");
    long filled = sausages ? Math.min(cut.grams(), pork ? cut.grams() : 13_500) : 0;
    if (sausages) {
      batches.tip(beast, Product.SAUSAGES, shift, day, filled, dice);
    }
    long ground = cut.grams() - filled;
    if (ground > 0 && beast.species().equals("beef") && !beast.is("tag")) {
      batches.tip(beast, Product.MINCE, shift, day, ground, dice);
    } else if (ground > 0) {
      int size = beast.species().equals("beef") ? 1_500 : 700;
      for (long pack : Packs.of(ground, size * 85 / 100, size * 115 / 100, dice)) {
        weigh(floor.bench1, shift, dice, "701", pack).body(beast.id());
      }
    }
  }

  private void bin(Beast beast, Cut cut, Shift shift, Dice dice) {
    boolean bone = cut.part().code().equals("801");
    long missed = !bone ? 0 : beast.is("lost") ? 9_380 : beast.is("spilt") ? 8_740 : 0;
    long grams = cut.grams() - missed;
    for (long bin : Packs.split(grams, (int) (grams / 32_000) + 1, dice)) {
      floor
          .bench2
          .weighGross(shift.after(dice.between(70, 160)), cut.part().code(), bin + BIN_TARE)
          .body(beast.id());
    }
  }

  private void cartons(Beast beast, Shift shift, Dice dice) {
    for (int carton = 0; carton < 3; carton++) {
      weigh(floor.bench2, shift, dice, "980", dice.between(16_000, 23_000)).body(beast.id());
    }
  }

  private static Row weigh(ScaleBook scale, Shift shift, Dice dice, String code, long grams) {
    return scale.weigh(shift.after(dice.between(50, 130)), code, grams);
  }
}
