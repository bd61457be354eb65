package gambrel.oracle;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The register over several nights, first statements and revisions of those that changed, and the
 * tables that rest on it.
 */
final class Ledger {
  /** The latest revisions, by customer and body. */
  private final SortedMap<String, Issued> inForce = new TreeMap<>(Split.byBytes());

  private final List<Issued> all = new ArrayList<>();

  /** Clauses of the contract that the nights met. */
  private final Set<String> met = new TreeSet<>();

  private World world;

  /**
   * A statement that went out.
   *
   * @param first when its first revision went out
   * @param figures what would be a change of it
   * @param open how many bodies are in each of its open batches
   */
  record Issued(
      int number,
      int revision,
      Instant at,
      Instant first,
      StatementFigures statement,
      Map<String, String> figures,
      Map<String, Integer> open) {

    List<String> row(World world) {
      return List.of(
          Print.text(statement.customer),
          Print.text(statement.body),
          "" + revision,
          time(world, at),
          statement.takeHome,
          statement.charges,
          statement.tax,
          statement.paid,
          statement.due,
          revision == 1 ? "" : "" + (revision - 1),
          "" + number);
    }

    static String time(World world, Instant at) {
      var pattern = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");
      return at.atZone(world.setup.zone).format(pattern);
    }
  }

  private static String key(StatementFigures statement) {
    return key(statement.customer, statement.body);
  }

  private static String key(String customer, String body) {
    return customer + "\u0000" + body;
  }

  /** Adds what a night issues. */
  void add(World night) {
    world = night;
    var due = new ArrayList<StatementFigures>();
    int revised = 0;
    for (var statement : StatementFigures.of(world)) {
      var before = inForce.get(key(statement));
      var open = open(statement.body);
      if (before == null) {
        due.add(statement);
      } else if (!before.figures().equals(figures(statement.customer, statement.body))) {
        due.add(statement);
        revised++;
      } else if (!before.open().equals(open) && !open.isEmpty()) {
        met.add("open batch of an issued body grows");
      }
    }
    int limit = Integer.parseInt(world.setup.setting("limit.revisions", "5"));
    if (revised > limit) {
      met.add("more revisions than allowed");
      due.removeIf(statement -> inForce.containsKey(key(statement)));
    } else if (revised > 0) {
      met.add("revision");
    }
    boolean charged = inForce().stream().anyMatch(issued -> !issued.statement().lines.isEmpty());
    met(charged && !due.isEmpty(), "charges of an earlier night");
    due.forEach(this::issue);
    new Accounts(world, this).table();
    new Unfinished(world, this).table();
  }

  private Map<String, Integer> open(String body) {
    var open = new TreeMap<String, Integer>();
    for (var batch : world.yields.get(body).batches) {
      if (batch.open) {
        open.put(batch.id, bodies(batch));
      }
    }
    return open;
  }

  private static int bodies(BatchFigures batch) {
    return (int)
        batch.rows.stream().filter(r -> r.is("tub")).map(r -> "" + r.body).distinct().count();
  }

  private void issue(StatementFigures statement) {
    var before = inForce.get(key(statement));
    int from = Integer.parseInt(world.setup.setting("number_from", "1"));
    var issued =
        new Issued(
            from + all.size(),
            before == null ? 1 : before.revision() + 1,
            world.asOf,
            before == null ? world.asOf : before.first(),
            statement,
            figures(statement.customer, statement.body),
            open(statement.body));
    met.addAll(world.verdicts.get(statement.body).charges.met);
    met(from > 1, "numbers that begin later");
    all.add(issued);
    inForce.put(key(statement), issued);
  }

  Set<String> met() {
    return met;
  }

  void met(boolean is, String clause) {
    if (is) {
      met.add(clause);
    }
  }

  /** The latest revisions, by customer, then body. */
  List<Issued> inForce() {
    return List.copyOf(inForce.values());
  }

  /** The tables after the last night. */
  Map<String, List<List<String>>> tables() {
    var tables = new LinkedHashMap<String, List<List<String>>>();
    tables.put("statements.csv", statements());
    tables.put("charges.csv", charges());
    tables.put("accounts.csv", new Accounts(world, this).table());
    tables.put("rail.csv", new Unfinished(world, this).table());
    return tables;
  }

  private List<List<String>> statements() {
    var table =
        Print.table(
            world.setup,
            "customer,body,revision,issued,take_home_kg,charges,tax,paid,due,replaces,number");
    all.forEach(issued -> table.add(issued.row(world)));
    return table;
  }

  private List<List<String>> charges() {
    var table =
        Print.table(
            world.setup,
            "number,customer,body,revision,issued,charge,description,quantity,unit,price,amount,"
                + "tax_percent,tax");
    for (var issued : inForce.values()) {
      var statement = issued.statement();
      for (var line : statement.lines) {
        var row =
            new ArrayList<>(
                List.of(
                    "" + issued.number(),
                    Print.text(statement.customer),
                    Print.text(statement.body),
                    "" + issued.revision(),
                    Issued.time(world, issued.at())));
        row.addAll(line);
        table.add(row);
      }
    }
    return table;
  }

  /** Whether nothing would go out of a body: all its statements are in force as they would be. */
  boolean isOut(Verdict verdict) {
    var body = verdict.body().beast.id();
    return verdict.recipients().stream()
        .allMatch(
            customer -> {
              var issued = inForce.get(key(customer, body));
              return issued != null && issued.figures().equals(figures(customer, body));
            });
  }

  /** What would be a change: weights, counts and percentages of a customer's statement. */
  private Map<String, String> figures(String customer, String body) {
    var yield = world.yields.get(body);
    var figures = new TreeMap<String, String>();
    CustomerNumbers.of(world, body, customer)
        .forEach((name, number) -> figures.put(name, Num.text(number)));
    boolean owns = world.verdicts.get(body).shares().all().containsKey(customer);
    for (var row : yield.body.rows) {
      boolean counted = !yield.body.beast.uncut() || yield.body.isOffal(row);
      boolean theirs = row.customer.equals(customer) || owns && row.customer.isEmpty();
      if (counted && row.isPack() && theirs) {
        figures.merge("packs:" + row.item, "1", (a, b) -> a + b);
        figures.merge("pieces:" + row.item, row.pieces + " ", (a, b) -> a + b);
      }
    }
    if (owns) {
      BodyNumbers.of(yield).forEach((name, number) -> figures.put("b " + name, Num.text(number)));
      yield.batches.stream().filter(b -> !b.open).forEach(b -> figures.putAll(batch(b)));
    }
    return figures;
  }

  private static Map<String, String> batch(BatchFigures batch) {
    var figures = new LinkedHashMap<String, String>();
    figures.put("batch " + batch.id + " bodies", "" + bodies(batch));
    figures.put("batch " + batch.id + " in", Num.text(batch.meat));
    figures.put("batch " + batch.id + " added", Num.text(batch.added));
    figures.put("batch " + batch.id + " out", Num.text(batch.out));
    return figures;
  }
}
