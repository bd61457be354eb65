package gambrel.demo;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** The demo's export rows as a person with a pocket calculator would add them up. */
final class DemoRows {
  static final Path FOLDER = Path.of("sample-exports");
  private static final Set<String> OFFAL = Set.of("101", "102", "103", "104", "105", "106");

  private final Map<String, Map<String, String>> codes = new HashMap<>();
  private final List<Map<String, String>> rows = new ArrayList<>();

  DemoRows() throws IOException {
    for (var code : table(FOLDER.resolve("codes.csv"))) {
      codes.put(code.get("code"), code);
    }
    var seen = new HashSet<String>();
    try (var files = Files.walk(FOLDER.resolve("exports"))) {
      for (var file : files.filter(Files::isRegularFile).sorted().toList()) {
        table(file).stream().filter(row -> seen.add(identity(row))).forEach(rows::add);
      }
    }
  }

  private static String identity(Map<String, String> row) {
    return String.join(" ", row.get("scale"), row.get("ticket"), row.get("time"), row.get("net"));
  }

  /** The rows of a file by column; the demo's files quote nothing. */
  static List<Map<String, String>> table(Path file) throws IOException {
    var text = Files.readString(file);
    var lines = (file.toString().contains("rail") ? RailExport.plain(text) : text).lines().toList();
    var columns = lines.get(0).split(",");
    var table = new ArrayList<Map<String, String>>();
    for (String line : lines.subList(1, lines.size())) {
      var cells = line.split(",", -1);
      var row = new HashMap<String, String>();
      for (int i = 0; i < columns.length; i++) {
        row.put(columns[i], cells[i]);
      }
      table.add(row);
    }
    return table;
  }

  List<Map<String, String>> all() {
    return rows;
  }

  /** What the key means; nothing for a key that {@code codes.csv} lacks. */
  Map<String, String> code(Map<String, String> row) {
    String code = row.get("code");
    return codes.getOrDefault(code.startsWith("71") ? "71*" : code, Map.of());
  }

  /** The rail weight of a body at a step, that of the last day if there are several. */
  BigDecimal rail(Beast beast, String step) {
    var last =
        rows.stream()
            .filter(row -> isOf(beast, row) && step.equals(code(row).get("step")))
            .map(row -> row.get("time").substring(0, 10))
            .max(String::compareTo);
    return sum(beast, step, row -> row.get("time").startsWith(last.orElse("none")));
  }

  /** What came off the rail to be cut. */
  BigDecimal boning(Beast beast) {
    var aged = rail(beast, "aged");
    return aged.signum() > 0 ? aged : rail(beast, "cold");
  }

  /** Packs, offal left out. */
  BigDecimal packed(Beast beast) {
    return sum(beast, "pack", row -> !OFFAL.contains(row.get("code")));
  }

  BigDecimal tubs(Beast beast) {
    return sum(beast, "tub", row -> true);
  }

  BigDecimal bins(Beast beast) {
    return sum(beast, "bin", row -> !row.get("code").equals("805"));
  }

  BigDecimal item(Beast beast, String item) {
    return rows.stream()
        .filter(row -> isOf(beast, row) && item.equals(code(row).get("item")))
        .map(this::net)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** All items keyed for a body. */
  Set<String> items(Beast beast) {
    var items = new TreeSet<String>();
    rows.stream()
        .filter(row -> isOf(beast, row))
        .map(row -> code(row).getOrDefault("item", ""))
        .filter(item -> !item.isEmpty())
        .forEach(items::add);
    return items;
  }

  private BigDecimal sum(Beast beast, String step, Predicate<Map<String, String>> which) {
    return rows.stream()
        .filter(row -> isOf(beast, row) && step.equals(code(row).get("step")))
        .filter(which)
        .map(this::net)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static boolean isOf(Beast beast, Map<String, String> row) {
    return row.get("body").equals(beast.id())
        || !beast.tags().isEmpty() && row.get("body").equals(beast.tags());
  }

  private BigDecimal net(Map<String, String> row) {
    if (!row.get("net").isEmpty()) {
      return new BigDecimal(row.get("net"));
    }
    return new BigDecimal(row.get("gross")).subtract(new BigDecimal(code(row).get("tare")));
  }
}
