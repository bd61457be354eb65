package gambrel.oracle;

import java.math.BigInteger;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The exact figures of one customer's part of a body, by the names that the attachment of a
 * statement gives them; {@code meat_home}, {@code bone_fat_home}, {@code offal}, {@code outright},
 * {@code added} and {@code boxes} are sums that only the page prints.
 */
final class CustomerNumbers {
  private final Map<String, BigFraction> numbers = new TreeMap<>();
  private final Yield yield;
  private final Shares shares;
  private final String customer;

  private CustomerNumbers(Yield yield, Shares shares, String customer) {
    this.yield = yield;
    this.shares = shares;
    this.customer = customer;
  }

  static Map<String, BigFraction> of(World world, String body, String customer) {
    var shares = world.verdicts.get(body).shares();
    var numbers = new CustomerNumbers(world.yields.get(body), shares, customer);
    for (var sum :
        Set.of("take_home", "meat_home", "bone_fat_home", "offal", "outright", "added")) {
      numbers.numbers.put(sum, BigFraction.ZERO);
    }
    numbers.packs();
    if (numbers.owns() && !numbers.yield.body.beast.uncut()) {
      numbers.batches();
    }
    var boxes = numbers.numbers.get("take_home").add(numbers.numbers.get("offal"));
    numbers.numbers.put("boxes", boxes.add(numbers.numbers.get("added")));
    if (numbers.owns()) {
      numbers.numbers.put("share", shares.all().get(customer));
    }
    return numbers.numbers;
  }

  private boolean owns() {
    return shares.all().containsKey(customer);
  }

  private void packs() {
    var body = yield.body;
    var common = new TreeMap<String, BigFraction>();
    var outright = new TreeMap<String, BigFraction>();
    for (var row : body.rows) {
      if (row.isPack() && (!body.beast.uncut() || body.isOffal(row))) {
        if (row.customer.isEmpty()) {
          common.merge(row.item, row.net, BigFraction::add);
        } else if (row.customer.equals(customer)) {
          outright.merge(row.item, row.net, BigFraction::add);
        }
      }
    }
    if (body.beast.uncut() && !body.beast.condemned() && yield.takeHome != null) {
      common.put(Tree.ROOT, yield.takeHome);
    }
    outright.forEach((item, weight) -> add(item, Num.rounded(weight, 3), true));
    if (owns()) {
      common.forEach((item, weight) -> add(item, part(weight), false));
    }
  }

  private BigFraction part(BigFraction weight) {
    BigInteger steps = Split.of(Num.steps(weight, 3), shares.all()).get(customer);
    return Num.ofSteps(steps, 3);
  }

  private void add(String item, BigFraction weight, boolean outright) {
    var kind = yield.body.tree.kind(item);
    numbers.merge("item:" + item, weight, BigFraction::add);
    if (kind.equals("offal")) {
      numbers.merge("offal", weight, BigFraction::add);
      return;
    }
    numbers.merge("take_home", weight, BigFraction::add);
    if (Set.of("meat", "trim").contains(kind)) {
      numbers.merge("meat_home", weight, BigFraction::add);
    }
    if (Set.of("bone", "fat").contains(kind)) {
      numbers.merge("bone_fat_home", weight, BigFraction::add);
    }
    if (outright) {
      numbers.merge("outright", weight, BigFraction::add);
    }
  }

  private void batches() {
    for (var batch : yield.batches) {
      if (!batch.open) {
        var part = part(batch.part(yield.body.beast.id()));
        numbers.put("batch:" + batch.id, part);
        numbers.merge("take_home", part, BigFraction::add);
        numbers.merge("meat_home", part, BigFraction::add);
        var added = part(batch.addedPart(yield.body.beast.id()));
        numbers.merge("added", added, BigFraction::add);
      }
    }
  }
}
