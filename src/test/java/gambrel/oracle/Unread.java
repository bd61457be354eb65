package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Rows of the shop's tables that cannot be read, and the bodies that each could concern. */
final class Unread {
  private static final List<String> FILES =
      List.of("customers", "bodies", "shares", "charges", "payments", "corrections", "batches");
  private static final Set<String> GOING_OUT = Set.of("charges", "payments", "batches");

  private final World world;
  private final Setup setup;

  /** One row by the table that it stands in. */
  record Place(String table, Csv.Line line) {}

  Unread(World world) {
    this.world = world;
    setup = world.setup;
  }

  /** The rows that hold a body, issued or not. */
  List<Place> holding(Verdict verdict) {
    return concerning(verdict, table -> !GOING_OUT.contains(table));
  }

  /** The rows that hold a body of which something would go out. */
  List<Place> holdingWhatGoesOut(Verdict verdict) {
    return concerning(verdict, GOING_OUT::contains);
  }

  private List<Place> concerning(Verdict verdict, Predicate<String> tables) {
    var found = new ArrayList<Place>();
    FILES.stream()
        .filter(tables)
        .forEach(
            table ->
                setup.unread(table).stream()
                    .filter(line -> !isLater(table, line) && concerns(table, line, verdict))
                    .forEach(line -> found.add(new Place(table, line))));
    return found;
  }

  private boolean isLater(String table, Csv.Line line) {
    var column = table.equals("corrections") ? "on" : "date";
    return List.of("payments", "corrections").contains(table)
        && setup.columns.isLegible(table, line, column)
        && setup.moment(line.get(column)).isAfter(world.asOf);
  }

  private boolean concerns(String table, Csv.Line line, Verdict verdict) {
    if (table.equals("batches")) {
      return verdict.batches().stream()
          .anyMatch(b -> line.tooMany() || List.of("", b.id).contains(line.get("batch")));
    }
    if (line.tooMany()) {
      return true;
    }
    if (table.equals("corrections")) {
      return line.get("ticket").isEmpty() || corrects(line, verdict);
    }
    var named = new ArrayList<Boolean>();
    var beast = verdict.body().beast;
    var body = line.get("body");
    boolean ownRow = table.equals("bodies") || table.equals("shares");
    if (table.equals("bodies") && !body.isEmpty() || setup.bodies.containsKey(body)) {
      named.add(body.equals(beast.id()));
    }
    var customer = line.get("customer");
    if (setup.customers.contains(customer) && !(ownRow && !body.isEmpty())) {
      boolean nobodys =
          table.equals("shares")
              && beast.customer().isEmpty()
              && setup.table("shares").stream().noneMatch(l -> l.get("body").equals(beast.id()));
      named.add(nobodys || verdict.customers().contains(customer));
    }
    if (setup.columns.isLegible(table, line, "species")) {
      named.add(beast.species().equals(line.get("species")));
    }
    if (setup.columns.isLegible(table, line, "item") && table.equals("charges")) {
      named.add(weighed(verdict.body(), line.get("item")));
    }
    return !named.contains(false);
  }

  private static boolean weighed(BodyFigures body, String item) {
    return body.tree.has(item) && body.rows.stream().anyMatch(r -> body.tree.isUnder(r.item, item));
  }

  private boolean corrects(Csv.Line line, Verdict verdict) {
    var beast = verdict.body().beast;
    var rows =
        world.exports.rows.stream()
            .filter(
                r -> Corrections.fits(setup, line, r, setup.scales.containsKey(line.get("scale"))))
            .toList();
    var batches = rows.stream().map(r -> r.batch).collect(Collectors.toSet());
    boolean unnamed =
        rows.stream().allMatch(r -> r.named.isEmpty() && r.batch.isEmpty())
            && !setup.bodies.containsKey(line.get("value"));
    return !rows.isEmpty()
        && (unnamed
            || line.get("value").equals(beast.id())
            || rows.stream().anyMatch(r -> r.named.contains(beast))
            || verdict.batches().stream().anyMatch(b -> batches.contains(b.id)));
  }
}
