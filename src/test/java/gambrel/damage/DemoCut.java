package gambrel.damage;

import gambrel.demo.RailExport;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * A small shop cut out of the demo shop, with all of its tables: nine bodies, each scale's exports
 * in one file. What the nine do not show is added: a body weighed under a tag, a pack put up for a
 * customer by name, a tub of an item of the shop's own, a ticket printed twice and voided by its
 * line, a bin that was never weighed and a release for it.
 */
final class DemoCut {
  private static final Set<String> BODIES =
      Set.of("B0703", "L0403", "L0405", "L0406", "L0407", "L0408", "G0101", "P0212", "D0051");
  private static final Set<String> BATCHES = Set.of("M703", "H212", "K212");
  private static final Set<String> CUSTOMERS =
      Set.of(
          "dunmore",
          "fenwick",
          "tibbett",
          "corrigan",
          "rennie",
          "tolley",
          "wojcik",
          "osei",
          "sutter");
  private static final Set<String> TEST_DAYS = Set.of("2026-07-08", "2026-08-20", "2026-09-03");
  private static final String BENCH_DAY = "2026-08-28";
  private static final Set<String> BENCH_DAYS = Set.of("2026-07-08", "2026-08-14", BENCH_DAY);

  /** Tickets keyed on another body and corrected. */
  private static final Set<String> FIRST_PACKS = Set.of("5019", "5020", "5021", "5022");

  private static final Pattern EXPORT = Pattern.compile("exports/([a-z0-9]+)/.*");

  private static final String TAG = "5127";

  private final Map<String, TypedTable> tables = new TreeMap<>();

  private DemoCut() {}

  /** The tables of the shop by file. */
  static Map<String, TypedTable> tables() {
    var cut = new DemoCut();
    FolderCopy.of(Path.of("sample-exports"))
        .files()
        .forEach((file, bytes) -> cut.take(file, new String(bytes, StandardCharsets.UTF_8)));
    cut.finish();
    return cut.tables;
  }

  /** The files of some tables. */
  static FolderCopy folder(Map<String, TypedTable> tables) {
    var files = new TreeMap<String, byte[]>();
    tables.forEach((file, table) -> files.put(file, table.bytes()));
    return new FolderCopy(files);
  }

  /** Takes a file of the demo; the exports of the rail scale without the need of its layout. */
  private void take(String file, String text) {
    if (file.startsWith("layouts/")) {
      return;
    }
    boolean rail = file.startsWith("exports/rail/");
    var table = TypedTable.read(file, rail ? RailExport.plain(text) : text);
    var export = EXPORT.matcher(file);
    if (export.matches()) {
      var target = "exports/" + export.group(1) + "/all.csv";
      var rows = new ArrayList<List<String>>();
      var merged = tables.get(target);
      if (merged != null) {
        rows.addAll(merged.rows());
      }
      rows.addAll(where(table, row -> export(table, row)).rows());
      tables.put(target, new TypedTable(target, ',', table.header(), rows));
    } else {
      tables.put(file, cut(table));
    }
  }

  private static String cell(TypedTable table, List<String> row, String column) {
    int at = table.header().indexOf(column);
    return at < 0 || at >= row.size() ? "" : row.get(at);
  }

  private static TypedTable where(TypedTable table, Predicate<List<String>> kept) {
    return table.withRows(table.rows().stream().filter(kept).toList());
  }

  private static boolean export(TypedTable table, List<String> row) {
    var code = cell(table, row, "code");
    return BODIES.contains(cell(table, row, "body"))
        || BATCHES.contains(cell(table, row, "batch"))
        || (code.equals("991") || code.equals("992"))
            && TEST_DAYS.contains(cell(table, row, "time").substring(0, 10))
        || FIRST_PACKS.contains(cell(table, row, "ticket"))
            && cell(table, row, "time").startsWith("2026-07-08")
        || row.get(0).startsWith("bench")
            && cell(table, row, "body").isEmpty()
            && cell(table, row, "batch").isEmpty()
            && cell(table, row, "time").startsWith(BENCH_DAY);
  }

  private TypedTable cut(TypedTable table) {
    return switch (table.file()) {
      case "customers.csv" -> where(table, r -> CUSTOMERS.contains(r.get(0)));
      case "bodies.csv", "shares.csv" -> where(table, r -> BODIES.contains(r.get(0)));
      case "payments.csv" -> where(table, r -> BODIES.contains(cell(table, r, "body")));
      case "batches.csv" -> where(table, r -> BATCHES.contains(r.get(0)));
      case "corrections.csv" -> where(table, r -> Set.of("5019-5022", "6822").contains(r.get(1)));
      case "bench.csv" -> where(table, r -> BENCH_DAYS.contains(r.get(1).substring(0, 10)));
      case "values.csv" -> table.withRows(table.rows().subList(0, 8));
      default -> table;
    };
  }

  private void finish() {
    replace("charges.csv", row -> row.contains("B0708"), "B0708", "L0403");
    replace("bodies.csv", row -> row.contains("L0406"), "quaife", "wojcik");
    set("bodies.csv", row -> row.contains("L0406"), "tags", TAG);
    replace("exports/rail/all.csv", row -> row.contains("L0406"), "L0406", TAG);
    var bench = tables.get("exports/bench1/all.csv");
    int pack = first(bench, row -> row.contains("L0406"));
    tables.put(bench.file(), bench.withCell(pack, bench.header().indexOf("customer"), "tolley"));
    tables.computeIfPresent(
        "exports/bench2/all.csv",
        (file, table) ->
            table.withCell(
                first(table, row -> row.contains("M703")), table.header().indexOf("code"), "852"));
    voidADoublePress();
    releaseWithoutABin();
    var codes = new ArrayList<String>();
    tables.values().stream()
        .filter(t -> t.file().startsWith("exports/"))
        .forEach(t -> t.rows().forEach(row -> codes.add(cell(t, row, "code"))));
    tables.computeIfPresent(
        "codes.csv", (file, table) -> where(table, row -> codes.contains(row.get(0))));
  }

  private void voidADoublePress() {
    var bench = tables.get("exports/bench1/all.csv");
    int pressed = first(bench, row -> row.contains("L0403"));
    var again = new ArrayList<>(bench.rows().get(pressed));
    again.set(bench.header().indexOf("ticket"), "99001");
    var rows = new ArrayList<>(bench.rows());
    rows.add(pressed + 1, again);
    tables.put(bench.file(), bench.withRows(rows));
    var corrections = tables.get("corrections.csv");
    var more = new ArrayList<>(corrections.rows());
    more.add(
        List.of(
            "bench1",
            bench.file() + ":" + bench.line(pressed + 1),
            "",
            "status",
            "void",
            "Hetty",
            "2026-08-03T07:05",
            "ticket printed twice"));
    tables.put(corrections.file(), corrections.withRows(more));
  }

  private void releaseWithoutABin() {
    tables.computeIfPresent(
        "exports/bench2/all.csv",
        (file, table) ->
            where(
                table,
                row -> !row.contains("L0407") || !cell(table, row, "code").startsWith("80")));
    replace("releases.csv", row -> true, "B0713", "L0407");
    replace("releases.csv", row -> true, "2026-08-19T08:40", "2026-08-29T08:40");
  }

  private static int first(TypedTable table, Predicate<List<String>> fits) {
    int row = 0;
    while (!fits.test(table.rows().get(row))) {
      row++;
    }
    return row;
  }

  private void replace(String file, Predicate<List<String>> rows, String from, String to) {
    tables.computeIfPresent(
        file,
        (f, table) ->
            table.withRows(
                table.rows().stream()
                    .map(
                        row ->
                            rows.test(row)
                                ? row.stream().map(c -> c.equals(from) ? to : c).toList()
                                : row)
                    .toList()));
  }

  private void set(String file, Predicate<List<String>> rows, String column, String cell) {
    var table = tables.get(file);
    tables.put(file, table.withCell(first(table, rows), table.header().indexOf(column), cell));
  }
}
