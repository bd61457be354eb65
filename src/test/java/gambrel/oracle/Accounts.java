package gambrel.oracle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** {@code data/accounts.csv}: what each customer was charged and has paid. */
final class Accounts {
  private final World world;
  private final Ledger ledger;
  private final List<Ledger.Issued> inForce;
  private final List<Csv.Line> payments;

  Accounts(World world, Ledger ledger) {
    this.world = world;
    this.ledger = ledger;
    inForce = ledger.inForce();
    payments =
        world.setup.table("payments").stream()
            .filter(line -> !world.setup.moment(line.get("date")).isAfter(world.asOf))
            .toList();
  }

  List<List<String>> table() {
    var table = Print.table(world.setup, "customer,statements,charges,tax,paid,due,oldest");
    var customers = new TreeSet<>(Split.byBytes());
    inForce.forEach(issued -> customers.add(issued.statement().customer));
    payments.forEach(line -> customers.add(line.get("customer")));
    customers.forEach(customer -> table.add(row(customer)));
    return table;
  }

  private List<String> row(String customer) {
    var statements =
        inForce.stream()
            .filter(issued -> issued.statement().customer.equals(customer))
            .sorted(Comparator.comparing(Ledger.Issued::first))
            .toList();
    var paid = payments.stream().filter(line -> line.get("customer").equals(customer)).toList();
    var charges = BigFraction.ZERO;
    var tax = BigFraction.ZERO;
    for (var issued : statements) {
      charges = charges.add(Num.of(issued.statement().charges));
      tax = tax.add(Num.of(issued.statement().tax));
    }
    var due = charges.add(tax).subtract(sum(paid));
    ledger.met(statements.isEmpty(), "payment without a statement");
    ledger.met(paid.stream().anyMatch(Accounts::isNegative), "payment given back");
    return List.of(
        Print.text(customer),
        "" + statements.size(),
        money(charges),
        money(tax),
        money(sum(paid)),
        money(due),
        oldest(statements, paid));
  }

  /** When the oldest went out that is not fully paid; blank where all are. */
  private String oldest(List<Ledger.Issued> statements, List<Csv.Line> paid) {
    var owed = new ArrayList<BigFraction>();
    var named = new ArrayList<Csv.Line>();
    var spare = BigFraction.ZERO;
    for (var issued : statements) {
      var own = paid.stream().filter(l -> l.get("body").equals(issued.statement().body)).toList();
      named.addAll(own);
      var charged = Num.of(issued.statement().charges).add(Num.of(issued.statement().tax));
      var left = charged.subtract(sum(own));
      owed.add(left.signum() > 0 ? left : BigFraction.ZERO);
      spare = left.signum() < 0 ? spare.subtract(left) : spare;
      note(charged, own, left);
    }
    var others = paid.stream().filter(line -> !named.contains(line)).toList();
    for (var line : others) {
      boolean unnamed = line.get("body").isEmpty();
      ledger.met(unnamed, "payment that names no body");
      ledger.met(!unnamed, "payment for a body without a statement");
    }
    spare = spare.add(sum(others));
    for (int i = 0; i < owed.size(); i++) {
      if (owed.get(i).signum() > 0 && owed.get(i).compareTo(spare) > 0) {
        return world.setup.localDate(statements.get(i).first()).toString();
      }
      boolean more = owed.subList(i + 1, owed.size()).stream().anyMatch(o -> o.signum() > 0);
      ledger.met(owed.get(i).signum() > 0 && more, "oldest paid by what is spare");
      spare = spare.subtract(owed.get(i));
    }
    // Only money given back is owed: the contract does not say since which statement.
    return !statements.isEmpty() && spare.signum() < 0 ? OracleDiff.ANY : "";
  }

  private void note(BigFraction charged, List<Csv.Line> own, BigFraction left) {
    boolean part = !own.isEmpty() && charged.signum() > 0;
    ledger.met(charged.signum() < 0, "statement that is a credit");
    ledger.met(part && left.signum() > 0, "paid in part");
    ledger.met(part && left.signum() < 0, "paid too much");
  }

  private static boolean isNegative(Csv.Line payment) {
    return payment.get("amount").startsWith("-");
  }

  private static BigFraction sum(List<Csv.Line> payments) {
    return payments.stream()
        .map(line -> Num.of(line.get("amount")))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  private String money(BigFraction amount) {
    return world.setup.money(Num.steps(amount, world.setup.minorDigits()));
  }
}
