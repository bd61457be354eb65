package gambrel.insight.cause;

import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * A shop whose bodies all balance, made from a seed: ten to sixty bodies of a few species, hung,
 * cut in turn at one or two benches, every pack and tub weighed, losses of half to two per cent.
 */
final class CleanShop {
  /** The moment at which all bodies have been cut. */
  static final String AS_OF = "2026-06-30T02:00";

  private static final LocalDate FIRST_KILL = LocalDate.parse("2026-03-02");

  final List<ShopRow> rows = new ArrayList<>();
  final Map<String, Recipe> bodies = new LinkedHashMap<>();
  final Map<String, LocalDate> killed = new LinkedHashMap<>();
  final ShopStyle style;
  private final SplittableRandom random;

  CleanShop(long seed) {
    random = new SplittableRandom(seed);
    style = new ShopStyle(random);
    new ShopFloor(this, random).work(FIRST_KILL);
    number();
  }

  /** Numbers the tickets of each scale in order of time. */
  void number() {
    rows.sort(Comparator.comparing((ShopRow r) -> r.time).thenComparing(r -> r.scale));
    var next = new TreeMap<String, Integer>();
    for (var row : rows) {
      row.ticket = next.merge(row.scale, 1, Integer::sum) + 1000;
    }
  }

  /** The rows of one scale in order. */
  List<ShopRow> of(String scale) {
    return rows.stream().filter(r -> r.scale.equals(scale)).toList();
  }

  /** Writes the shop folder without its exports. */
  Path write(Path folder) {
    var files = new LinkedHashMap<String, List<String>>();
    files.put("shop.properties", style.settings());
    files.put("customers.csv", List.of("customer,name", "ann,Ann"));
    files.put("scales.csv", style.scales());
    files.put("bodies.csv", bodyRows());
    files.put("codes.csv", codeRows());
    try {
      Files.createDirectories(folder.resolve("exports"));
      for (var file : files.entrySet()) {
        Files.writeString(folder.resolve(file.getKey()), String.join("\n", file.getValue()) + "\n");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return folder;
  }

  /** The exports as read, one for each scale, with the rows that {@code wanted} accepts. */
  List<ExportFile> exports(Predicate<ShopRow> wanted) {
    var files = new TreeMap<String, List<ExportRow>>();
    for (var row : rows) {
      String path = "exports/" + row.scale + ".csv";
      var file = files.computeIfAbsent(path, p -> new ArrayList<>());
      if (wanted.test(row)) {
        file.add(row.exported(new Place(path, row.ticket)));
      }
    }
    return files.entrySet().stream().map(e -> new ExportFile(e.getKey(), e.getValue())).toList();
  }

  private List<String> bodyRows() {
    var lines = new ArrayList<>(List.of("body,species,killed,customer"));
    bodies.forEach(
        (id, recipe) ->
            lines.add(String.join(",", id, recipe.species(), killed.get(id).toString(), "ann")));
    return lines;
  }

  private List<String> codeRows() {
    var lines = new ArrayList<>(List.of("code,item,step,tare"));
    for (String code : new TreeSet<>(rows.stream().map(r -> r.code).toList())) {
      var parts = code.split("\\.");
      lines.add(String.join(",", code, parts[1], parts[0], style.tareCell(code)));
    }
    return lines;
  }
}
