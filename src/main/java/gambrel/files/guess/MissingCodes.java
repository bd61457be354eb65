package gambrel.files.guess;

import gambrel.files.csv.NameComparison;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.FileWord;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The rows that codes.csv lacks, ready to paste. */
record MissingCodes(Shop shop, AsRead read) {
  private static final int MOST = 60;

  /** What is to be said; no lines if no code is missing. */
  List<String> lines() {
    var known = CodeIndex.of(shop);
    var examples = new TreeMap<String, ExportRow>();
    for (var row : read.rows()) {
      String code = row.get(Field.CODE);
      if (!code.isEmpty() && row.broken().isEmpty() && known.find(code).isEmpty()) {
        examples.putIfAbsent(code, row);
      }
    }
    if (examples.isEmpty()) {
      return List.of();
    }
    var lines = new ArrayList<String>();
    lines.add("  Codes that codes.csv lacks; the rows to add, each with its item and step:");
    lines.add("    code,item,step,description");
    var names = names();
    examples.keySet().stream()
        .limit(MOST)
        .forEach(code -> lines.add("    " + line(code, names.getOrDefault(code, ""))));
    return lines;
  }

  private String line(String code, String name) {
    String description = name.indexOf(',') < 0 ? name : '"' + name.replace("\"", "\"\"") + '"';
    return Stream.of(name, code)
        .flatMap(text -> meaning(text).stream())
        .findFirst()
        .map(meaning -> code + ',' + meaning + ',' + description)
        .orElse(code + ",,," + description);
  }

  /** Item and step of a text that names a step of the rail, or an item. */
  private Optional<String> meaning(String text) {
    return FileWord.find(Step.class, text)
        .filter(Step::isRail)
        .map(step -> "carcase," + step.id())
        .or(() -> item(text).map(item -> item.id() + ',' + step(item)))
        .or(() -> GuessWords.meaning(text));
  }

  /** The item of that id or name, of the species of the shop's bodies first. */
  private Optional<Item> item(String text) {
    var species = shop.bodies().values().stream().map(Body::species).collect(Collectors.toSet());
    String plain = NameComparison.plain(text);
    return shop.cuts().all().stream()
        .sorted(Comparator.comparing(tree -> !species.contains(tree.species())))
        .flatMap(tree -> tree.items().stream())
        .filter(
            item ->
                Stream.of(item.id(), item.name())
                    .map(NameComparison::plain)
                    .anyMatch(plain::equals))
        .findFirst();
  }

  private static String step(Item item) {
    return switch (item.kind()) {
      case BONE, FAT, WASTE -> "bin";
      case TRIM -> "tub";
      case CARCASE -> "cold";
      case ADDED -> "added";
      default -> "pack";
    };
  }

  /** By code the text beside it, if the export has an unused column that goes with the code. */
  private TreeMap<String, String> names() {
    var best = new TreeMap<String, String>();
    Integer code = read.positions().get(Field.CODE.id());
    if (code == null) {
      return best;
    }
    for (int i : IntStream.range(0, read.names().size()).toArray()) {
      var names = new TreeMap<String, String>();
      boolean goes = !read.positions().containsValue(i);
      for (var record : read.records()) {
        String name = record.cell(i);
        goes &= name.isEmpty() || name.equals(names.getOrDefault(record.cell(code), name));
        names.put(record.cell(code), name);
      }
      boolean words = names.values().stream().anyMatch(text -> text.matches(".*\\p{L}{3}.*"));
      if (goes
          && words
          && names.values().stream().distinct().count()
              > best.values().stream().distinct().count()) {
        best = names;
      }
    }
    return best;
  }
}
