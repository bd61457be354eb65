package gambrel.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One body's way through the shop, from the rail to the last pack. */
final class BodyMaker {
  private static final Map<String, Integer> LIVE =
      Map.of("beef", 480, "veal", 170, "lamb", 46, "pork", 105, "goat", 38, "game", 65);

  private final Weigher weigher;
  private final ShopPlan plan;
  private final Dice dice;
  private final Tree tree;
  final String id;
  final String species;
  final LocalDate killed;
  final int head;
  final List<String> tags = new ArrayList<>();
  final List<SimBatch> batches;

  String outcome = "";
  BigDecimal live;

  BodyMaker(Weigher weigher, TreeSource trees, String id, Map<String, List<SimBatch>> batches) {
    this.weigher = weigher;
    this.id = id;
    plan = weigher.plan();
    dice = plan.dice;
    species = dice.pick(plan.species);
    this.batches = batches.get(species);
    tree = new Tree(trees.items(species));
    killed = plan.firstDay.plusDays(dice.between(0, plan.spread));
    boolean small = LIVE.get(species) < 70;
    head = small && dice.chance(25) ? dice.between(2, 4) : 1;
    if (dice.chance(25)) {
      tags.add("7" + id.replaceAll("\\D", "") + "0");
    }
    if (dice.chance(4)) {
      tags.add(0, "777"); // now and then two bodies have it
    }
    if (dice.chance(15)) {
      outcome = dice.pick(List.of("whole", "condemned", "cancelled"));
    }
    var kilograms = new BigDecimal(LIVE.get(species) * head).multiply(dice.thousandths(850, 1150));
    live = plan.weight(kilograms).round(new MathContext(4));
  }

  void run() {
    boolean unseen = List.of("cancelled", "condemned").contains(outcome);
    if (unseen && dice.chance(50) || dice.chance(3)) {
      return;
    }
    var hot = live.multiply(dice.thousandths(500, 580));
    var hang = new HangMaker(weigher, this, hot);
    var boning = hang.run();
    if (outcome.isEmpty() || dice.chance(10)) {
      cut(boning, hang.lastDay);
    }
  }

  /** The name keyed at the scale. */
  String keyed() {
    return !tags.isEmpty() && dice.chance(40) ? tags.get(0) : id;
  }

  private void cut(BigDecimal boning, LocalDate lastDay) {
    if (dice.chance(4)) {
      return;
    }
    weigher.goTo(lastDay.plusDays(dice.pick(List.of(0, 0, 1, 2, 3, 5))), 11);
    var left = boning.multiply(loss());
    if (dice.chance(40)) {
      blocks(boning);
    }
    if (!batches.isEmpty() && dice.chance(60)) {
      left = left.subtract(tubs(weigher.part(left, 100, 250)));
    }
    left = left.subtract(bins(left));
    if (!plan.bins.equals("weighed") && dice.chance(20)) {
      left = left.multiply(dice.thousandths(150, 700)); // the rest is cut some other day
    }
    packs(left);
    extras(boning);
  }

  /** What is left of the weight after the saw, the knife and the drip; at times far off. */
  private BigDecimal loss() {
    return dice.chance(90)
        ? dice.thousandths(974, 999)
        : dice.pick(List.of(dice.thousandths(900, 960), dice.thousandths(1005, 1040)));
  }

  private void blocks(BigDecimal boning) {
    var half = boning.divide(new BigDecimal(2), MathContext.DECIMAL64);
    if (dice.chance(35)) {
      weigher.weigh(plan.railScale, keyed(), "block", Tree.ROOT, boning);
    }
    boolean whole = dice.chance(50);
    weigher.weigh(plan.benchScale, keyed(), "block", "hindquarter", weigher.part(half, 470, 500));
    if (whole) {
      weigher.weigh(plan.benchScale, keyed(), "block", "forequarter", weigher.part(half, 480, 510));
    }
    if (dice.chance(40)) {
      var piece = dice.pick(under("hindquarter"));
      weigher.weigh(plan.benchScale, keyed(), "block", piece, weigher.part(half, 90, 150));
    }
  }

  /** Cuts of meat that lie under a part. */
  List<String> under(String ancestor) {
    return tree.items().stream()
        .filter(item -> tree.isUnder(item, ancestor) && tree.kind(item).equals("meat"))
        .toList();
  }

  private BigDecimal tubs(BigDecimal weight) {
    var batch = dice.pick(batches);
    int count = dice.between(1, 3);
    var each = weight.divide(new BigDecimal(count), MathContext.DECIMAL64);
    for (int i = 0; i < count; i++) {
      var item = dice.pick(List.of("trim", "mince"));
      weigher.weigh(plan.benchScale, keyed(), "tub", item, each).set("batch", batch.id());
    }
    if (dice.chance(10)) {
      weigher.weigh(plan.benchScale, keyed(), "tub", "trim", each);
    }
    batch.took(weight, weigher.clock());
    return weight;
  }

  private BigDecimal bins(BigDecimal left) {
    if (plan.bins.equals("no") && dice.chance(80)) {
      return weigher.part(left, 180, 250);
    }
    var bone = weigher.part(left, 120, 170);
    var fat = weigher.part(left, 40, 90);
    weigher.weigh(plan.benchScale, keyed(), "bin", "bone", bone);
    weigher.weigh(plan.benchScale, keyed(), "bin", "fat", fat);
    if (dice.chance(40)) {
      var waste = weigher.part(left, 5, 15);
      var item = dice.pick(List.of("waste", "condemned"));
      weigher.weigh(plan.benchScale, keyed(), "bin", item, waste);
      return bone.add(fat).add(waste);
    }
    return bone.add(fat);
  }

  private void packs(BigDecimal left) {
    int count = dice.between(3, 9);
    var items = new ArrayList<>(under(dice.chance(15) ? "hindquarter" : Tree.ROOT));
    items.addAll(List.of("mince", "trim", "dog-bones"));
    var each = left.divide(new BigDecimal(count), MathContext.DECIMAL64);
    var over = BigDecimal.ZERO;
    for (int i = 0; i < count; i++) {
      var weight = i == count - 1 ? each.subtract(over) : weigher.part(each, 700, 1300);
      over = over.add(weight).subtract(each);
      var line = weigher.weigh(plan.packScale, keyed(), "pack", dice.pick(items), weight);
      if (dice.chance(8)) {
        line.set("customer", dice.chance(85) ? dice.pick(plan.customers) : "shop");
      }
    }
  }

  private void extras(BigDecimal boning) {
    if (dice.chance(15)) {
      weigher.goTo(weigher.clock().toLocalDate().plusDays(dice.between(2, 5)), 9);
      weigher.weigh(plan.packScale, keyed(), "pack", "heart", weigher.part(boning, 1, 5));
    }
    if (dice.chance(15)) {
      weigher.weigh(plan.packScale, keyed(), "pack", "kidney", weigher.part(boning, 1, 5));
    }
    if (dice.chance(8)) {
      weigher.weigh(plan.benchScale, keyed(), "bin", "heart", weigher.part(boning, 1, 5));
    }
    if (dice.chance(8)) {
      weigher.weigh(plan.packScale, keyed(), "other", "mince", weigher.part(boning, 1, 5));
    }
  }
}
