package gambrel.laws;

import gambrel.oracle.ExactNight;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** The figures of bodies and batches in the data files. */
final class DataPlaces {
  static final List<String> COLUMNS =
      List.of(
          "live",
          "hot",
          "cold",
          "boning",
          "take_home",
          "meat_home",
          "offal",
          "tub",
          "bone",
          "fat",
          "waste",
          "rail_trim",
          "cutting_loss",
          "unweighed",
          "batch_loss",
          "dressing_pct",
          "chill_shrink_pct",
          "ageing_shrink_pct",
          "take_home_of_hot_pct",
          "take_home_of_cold_pct",
          "meat_of_cold_pct",
          "days_hung",
          "hours_chilled");

  private final ExactNight exact;
  private final NightTables tables;
  private final Agreement agreement;
  private final Map<String, List<Map<String, String>>> byBody = new HashMap<>();

  DataPlaces(ExactNight exact, NightTables tables, Agreement agreement) {
    this.exact = exact;
    this.tables = tables;
    this.agreement = agreement;
    for (var table : List.of("cuts.csv", "pieces.csv")) {
      for (var row : tables.rows(table)) {
        byBody.computeIfAbsent(table + id(row, "body"), k -> new ArrayList<>()).add(row);
      }
    }
  }

  void compare() {
    for (var row : tables.rows("bodies.csv")) {
      var id = id(row, "body");
      if (exact.bodies().contains(id)) {
        columns("bodies.csv", id, row, COLUMNS);
        cuts(id);
        pieces(id);
      }
    }
    for (var row : tables.rows("shrink.csv")) {
      var names = List.of("days_hung", "hours_chilled", "chill_shrink_pct", "ageing_shrink_pct");
      columns("shrink.csv", id(row, "body"), row, names);
    }
    var batches = exact.batches();
    for (var row : tables.rows("batches.csv")) {
      var batch = batches.get(id(row, "batch"));
      for (var name : List.of("meat_in", "added", "out", "loss", "loss_pct")) {
        agreement.number("batches.csv " + row.get("batch"), cell(row, name), batch.get(name));
      }
    }
    for (var row : tables.rows("month-charts.csv")) {
      var name = row.get("chart").equals("chill") ? "chill_shrink_pct" : "cutting_loss_pct";
      var number = exact.body(id(row, "body")).get(name);
      agreement.number("month-charts.csv " + row.get("body"), row.get("value_pct"), number);
    }
    months();
  }

  private void columns(String file, String body, Map<String, String> row, List<String> names) {
    var numbers = exact.body(body);
    for (var name : names) {
      agreement.number(file + " " + body + " " + name, cell(row, name), numbers.get(name));
    }
  }

  static String id(Map<String, String> row, String column) {
    return row.get(column).replaceFirst("^'", "");
  }

  private static String cell(Map<String, String> row, String name) {
    for (var column : List.of(name, name + "_kg", name + "_lb")) {
      if (row.containsKey(column)) {
        return row.get(column);
      }
    }
    throw new AssertionError("no column " + name);
  }

  private List<Map<String, String>> rows(String table, String body) {
    return byBody.getOrDefault(table + body, List.of());
  }

  private static List<String> weights(
      List<Map<String, String>> rows, Predicate<Map<String, String>> which) {
    return rows.stream().filter(which).map(row -> cell(row, "weight")).toList();
  }

  /** The weighings of the body, item by item, add up to its figures. */
  private void cuts(String body) {
    var numbers = exact.body(body);
    var rows = rows("cuts.csv", body);
    for (var step : List.of("hot", "cold")) {
      if (numbers.containsKey(step)) {
        sum(body, step, weights(rows, row -> row.get("step").equals(step)), numbers.get(step));
      }
    }
    if (!numbers.containsKey("take_home") || !exact.outcome(body).isEmpty()) {
      return;
    }
    var batches =
        exact.batchParts(body).values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    var packed = numbers.get("take_home").subtract(batches);
    sum(body, "take_home", weights(rows, row -> isOf(row, "pack") && !isOffal(row)), packed);
    sum(
        body,
        "offal",
        weights(rows, row -> isOf(row, "pack") && isOffal(row)),
        numbers.get("offal"));
    if (numbers.containsKey("bone")) {
      for (var kind : List.of("bone", "fat")) {
        var bins = weights(rows, row -> isOf(row, "bin") && row.get("kind").equals(kind));
        sum(body, kind, bins, numbers.get(kind));
      }
      total(body, rows, packed);
    }
  }

  /** All that left the body, offal and rail trim too, stands in the row of its carcase. */
  private void total(String body, List<Map<String, String>> rows, BigFraction packed) {
    var numbers = exact.body(body);
    var total = packed;
    for (var name : List.of("offal", "tub", "bone", "fat", "waste")) {
      total = total.add(numbers.get(name));
    }
    for (var row : rows) {
      if (row.get("item").equals("carcase") && row.get("level").equals("total")) {
        agreement.number("cuts.csv " + body + " total", cell(row, "weight"), total);
        var boning = numbers.get("boning");
        var percent =
            boning == null || boning.signum() == 0
                ? null
                : total.multiply(BigFraction.of(100)).divide(boning);
        agreement.number("cuts.csv " + body + " of_boning", row.get("of_boning_pct"), percent);
      }
    }
  }

  private void sum(String body, String name, List<String> printed, BigFraction number) {
    agreement.sum("cuts.csv " + body + " " + name, printed, number);
  }

  private static boolean isOf(Map<String, String> row, String step) {
    return row.get("step").equals(step) && row.get("level").equals("own");
  }

  private static boolean isOffal(Map<String, String> row) {
    return row.get("kind").equals("offal");
  }

  /** A piece weighs what its row of cuts.csv says; what is lost is the rest of what came of it. */
  private void pieces(String body) {
    var cuts = rows("cuts.csv", body);
    for (var row : rows("pieces.csv", body)) {
      var place = "pieces.csv " + body + " " + row.get("item");
      var block = weights(cuts, c -> isOf(c, "block") && c.get("item").equals(row.get("item")));
      agreement.same(place, block, List.of(cell(row, "block")));
      if (row.get("item").equals("carcase") && !cell(row, "loss").isEmpty()) {
        var parts = new ArrayList<>(List.of(cell(row, "out"), cell(row, "loss")));
        agreement.sum(place, parts, fraction(cell(row, "block")));
      }
    }
  }

  /** A printed number as a fraction. */
  private static BigFraction fraction(String printed) {
    var number = new BigDecimal(printed);
    return BigFraction.of(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
  }

  /** Sums and averages over all bodies of an owner and species. */
  private void months() {
    for (var row : tables.rows("month-figures.csv")) {
      var numbers = exact.month(row.get("month"));
      var name = row.get("figure").replace("_pct", "");
      if (name.matches("(chill|ageing|bench|batch)_loss") && row.get("group").isEmpty()) {
        var whose = row.get("whose").isEmpty() ? "any" : row.get("whose");
        var key = whose + " " + row.get("species") + " " + name;
        boolean percent = row.get("figure").endsWith("_pct");
        var place = "month-figures.csv " + row.get("month") + " " + key;
        agreement.number(place, row.get("value"), numbers.get(percent ? key + " pct" : key));
        agreement.number(place, row.get("bodies"), numbers.get(key + " bodies"));
      }
    }
  }
}
