package gambrel.oracle;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** One customer's statement of one body. */
final class StatementFigures {
  final String customer;
  final String body;
  final String takeHome;
  final String charges;
  final String tax;
  final String paid;
  final String due;

  /** Its lines in {@code charges.csv}, from the charge to its tax. */
  final List<List<String>> lines;

  StatementFigures(World world, Yield yield, String customer) {
    this.customer = customer;
    body = yield.body.beast.id();
    var verdict = world.verdicts.get(body);
    takeHome = Num.text(Num.ofSteps(thousandths(yield, verdict.shares()), 3));
    var net = verdict.charges.net(customer);
    var taxed = verdict.charges.tax(customer);
    var money = paid(world);
    lines = verdict.charges.lines(customer);
    charges = world.setup.money(net);
    tax = world.setup.money(taxed);
    paid = world.setup.money(money);
    due = world.setup.money(net.add(taxed).subtract(money));
  }

  private BigInteger thousandths(Yield yield, Shares shares) {
    if (yield.body.beast.uncut()) {
      return yield.takeHome == null ? BigInteger.ZERO : part(shares, yield.takeHome);
    }
    Map<String, BigFraction> common = new TreeMap<>();
    Map<String, BigFraction> outright = new TreeMap<>();
    for (var row : yield.body.rows) {
      if (row.isPack() && !yield.body.isOffal(row)) {
        if (row.customer.isEmpty()) {
          common.merge(row.item, row.net, BigFraction::add);
        } else if (row.customer.equals(customer)) {
          outright.merge(row.item, row.net, BigFraction::add);
        }
      }
    }
    var sum = BigInteger.ZERO;
    for (var weight : common.values()) {
      sum = sum.add(part(shares, weight));
    }
    for (var weight : outright.values()) {
      sum = sum.add(Num.steps(weight, 3));
    }
    for (var batch : yield.batches) {
      sum = sum.add(part(shares, batch.part(body)));
    }
    return sum;
  }

  private BigInteger part(Shares shares, BigFraction weight) {
    return shares.all().containsKey(customer)
        ? Split.of(Num.steps(weight, 3), shares.all()).get(customer)
        : BigInteger.ZERO;
  }

  /** Of every customer who would get one by this night alone, by customer, then body. */
  static List<StatementFigures> of(World world) {
    var sorted = new TreeMap<String, StatementFigures>(Split.byBytes());
    if (world.setup.columns.stopped() || world.exports.unfinished) {
      return List.of();
    }
    world.yields.forEach(
        (id, yield) -> {
          var verdict = world.verdicts.get(id);
          if (verdict.state.equals("issued")) {
            for (var customer : verdict.recipients()) {
              sorted.put(customer + "\u0000" + id, new StatementFigures(world, yield, customer));
            }
          }
        });
    return List.copyOf(sorted.values());
  }

  private BigInteger paid(World world) {
    var setup = world.setup;
    var sum = BigFraction.ZERO;
    for (var line : setup.table("payments")) {
      if (line.get("customer").equals(customer)
          && line.get("body").equals(body)
          && !setup.moment(line.get("date")).isAfter(world.asOf)) {
        sum = sum.add(Num.of(line.get("amount")));
      }
    }
    return Num.steps(sum, setup.minorDigits());
  }
}
