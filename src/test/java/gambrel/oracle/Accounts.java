package gambrel.oracle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** {@code data/accounts.csv}: what each customer was charged and has paid. */
final class Accounts {
  /** Clauses of the contract that the accounts met. */
  final Set<String> met = new TreeSet<>();

  private final World world;
  private final List<Ledger.Issued> inForce;
  private final List<Csv.Line> payments;

  Accounts(World world, List<Ledger.Issued> inForce) {
    this.world = world;
    this.inForce = inForce;
    payments =
        world.setup.table("payments").stream()
            .filter(line -> !world.setup.moment(line.get("date")).isAfter(world.asOf))
            .toList();
  }

  List<List<String>> table() {
    var table =
        Print.table(world.setup, "customer,statements,charges,tax,paid,due,oldest");
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
    if (statements.isEmpty()) {
      met.add("payment without a statement");
    }
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
      var own =
          paid.stream().filter(l -> l.get("body").equals(issued.statement().body)).toList();
      named.addAll(own);
      var charged = Num.of(issued.statement().charges).add(Num.of(issued.statement().tax));
      var left = charged.subtract(sum(own));
      owed.add(left.signum() > 0 ? left : BigFraction.ZERO);
      spare = left.signum() < 0 ? spare.subtract(left) : spare;
      note(charged, own, left);
    }
    var others = paid.stream().filter(line -> !named.contains(line)).toList();
    if (others.stream().anyMatch(line -> line.get("body").isEmpty())) {
      met.add("payment that names no body");
    }
    spare = spare.add(sum(others));
    for (int i = 0; i < owed.size(); i++) {
      if (owed.get(i).compareTo(spare) > 0) {
        return world.setup.localDate(statements.get(i).first()).toString();
      }
      if (owed.get(i).signum() > 0 && i < owed.size() - 1) {
        met.add("oldest paid by what is spare");
      }
      spare = spare.subtract(owed.get(i));
    }
    return "";
  }

  private void note(BigFraction charged, List<Csv.Line> own, BigFraction left) {
    if (charged.signum() < 0) {
      met.add("statement that is a credit");
    }
    if (!own.isEmpty() && left.signum() != 0 && charged.signum() > 0) {
      met.add(left.signum() < 0 ? "paid too much" : "paid in part");
    }
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
