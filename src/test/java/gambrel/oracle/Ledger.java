package gambrel.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The register over several nights: first statements, and revisions of those that changed. */
final class Ledger {
  private final Map<List<String>, Entry> latest = new HashMap<>();
  private final List<List<String>> table = new ArrayList<>();

  /** Clauses of the contract that the nights met. */
  private final Set<String> met = new TreeSet<>();

  /** What is in force: its figures, and how many bodies are in each of its open batches. */
  private record Entry(int revision, Map<String, String> figures, Map<String, Integer> open) {}

  private record Due(
      List<String> key, List<String> row, Map<String, String> figures, Map<String, Integer> open) {}

  Ledger(World first) {
    table.add(OtherTables.statements(first).get(0));
  }

  /** Adds what a night issues. */
  void add(World world) {
    var revised = new ArrayList<Due>();
    var rows = OtherTables.statements(world);
    for (var row : rows.subList(1, rows.size())) {
      var key = row.subList(0, 2);
      var due = new Due(key, row, figures(world, key), open(world, key));
      var before = latest.get(key);
      if (before == null) {
        issue(due, 1);
      } else if (!before.figures().equals(due.figures())) {
        revised.add(due);
      } else if (!before.open().equals(open(world, key)) && !open(world, key).isEmpty()) {
        met.add("open batch of an issued body grows");
      }
    }
    int limit = Integer.parseInt(world.setup.setting("limit.revisions", "5"));
    if (revised.size() > limit) {
      met.add("more revisions than allowed");
      return;
    }
    for (var due : revised) {
      met.add("revision");
      issue(due, latest.get(due.key()).revision() + 1);
    }
  }

  private static Map<String, Integer> open(World world, List<String> key) {
    var open = new TreeMap<String, Integer>();
    for (var batch : world.yields.get(key.get(1).replaceFirst("^'", "")).batches) {
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

  private void issue(Due due, int revision) {
    latest.put(due.key(), new Entry(revision, due.figures(), due.open()));
    var row = new ArrayList<>(due.row());
    row.set(2, "" + revision);
    row.set(9, revision == 1 ? "" : "" + (revision - 1));
    table.add(row);
  }

  List<List<String>> table() {
    return table;
  }

  Set<String> met() {
    return met;
  }

  /** What would be a change: weights, counts and percentages of a customer's statement. */
  private static Map<String, String> figures(World world, List<String> key) {
    var customer = key.get(0).replaceFirst("^'", "");
    var yield = world.yields.get(key.get(1).replaceFirst("^'", ""));
    var figures = new TreeMap<String, String>();
    CustomerNumbers.of(world, yield.body.beast.id(), customer)
        .forEach((name, number) -> figures.put(name, Num.text(number)));
    boolean owns = world.verdicts.get(yield.body.beast.id()).shares().all().containsKey(customer);
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
