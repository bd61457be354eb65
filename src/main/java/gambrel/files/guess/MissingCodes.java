package gambrel.files.guess;

import gambrel.files.folder.ItemNames;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows that codes.csv lacks, ready to paste. */
final class MissingCodes {
  private static final int TWICE = 2;

  private final Shop shop;
  private final CodeIndex known;
  private final IdIndex bodies;
  private final ItemNames names;
  private final Set<Species> species;

  /** By code its name and the bodies of its rows. */
  private final TreeMap<String, Missing> missing = new TreeMap<>();

  private record Missing(String name, List<String> bodies) {}

  MissingCodes(Shop shop) {
    this.shop = shop;
    this.known = CodeIndex.of(shop);
    this.bodies = new IdIndex(shop.bodies().keySet());
    this.names = new ItemNames(shop.cuts(), shop.settings().region());
    this.species = shop.bodies().values().stream().map(Body::species).collect(Collectors.toSet());
  }

  /** Adds the codes of exports. */
  void add(AsRead read, GuessTable table) {
    var texts = names(read.layout().positions(table.top()), table);
    for (var row : read.rows().stream().map(ReadRow::row).toList()) {
      String code = row.get(Field.CODE);
      if (!code.isEmpty() && row.broken().isEmpty() && known.find(code).isEmpty()) {
        missing
            .computeIfAbsent(
                code, c -> new Missing(texts.getOrDefault(code, ""), new ArrayList<>()))
            .bodies()
            .add(row.get(Field.BODY));
      }
    }
  }

  /** The codes that are missing. */
  Set<String> all() {
    return Set.copyOf(missing.keySet());
  }

  /** What is to be said; no lines if no code is missing. */
  List<String> lines() {
    var sure = new ArrayList<String>();
    var open = new ArrayList<String>();
    missing.forEach(
        (code, of) -> {
          var rows =
              meanings(code, of).stream()
                  .map(meaning -> String.join(",", code, meaning, quoted(of.name())))
                  .toList();
          (rows.size() == 1 ? sure : open).addAll(rows);
          if (rows.isEmpty()) {
            open.add(String.join(",", code, "ITEM,STEP", quoted(of.name())));
          }
        });
    var lines = new ArrayList<String>();
    tell(lines, "codes.csv lacks codes. Look at these rows, then put them at its end:", sure);
    tell(
        lines,
        "Of each of these codes put one row there, the right one (gambrel cuts SHOP prints all"
            + " items):",
        open);
    return lines;
  }

  private static void tell(List<String> lines, String head, List<String> rows) {
    if (!rows.isEmpty()) {
      lines.add(head);
      rows.forEach(row -> lines.add("    " + row));
    }
  }

  private static String quoted(String name) {
    return name.indexOf(',') < 0 ? name : '"' + name.replace("\"", "\"\"") + '"';
  }

  /** Item and step of a code: one if its text names them, else those that it may mean. */
  private List<String> meanings(String code, Missing of) {
    var own =
        of.bodies().stream()
            .flatMap(body -> bodies.find(body).stream())
            .map(body -> shop.bodies().get(body).species())
            .collect(Collectors.toSet());
    var likely = own.isEmpty() ? species : own;
    return Stream.of(of.name(), code)
        .map(text -> meanings(text, likely))
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElseGet(
            () ->
                of.name().isEmpty()
                    ? onRail(of)
                    : names.nearest(of.name(), likely).stream()
                        .flatMap(MissingCodes::withStep)
                        .toList());
  }

  /**
   * A code without a name may be of the rail if each body has it once, as a carcase, or twice, as a
   * side, and no such code is weighed more often.
   */
  private List<String> onRail(Missing of) {
    boolean often =
        missing.values().stream()
            .filter(other -> other.name().isEmpty())
            .flatMap(other -> perBody(other).stream())
            .anyMatch(rows -> rows > TWICE);
    var counts = Set.copyOf(perBody(of));
    return often || counts.size() > 1
        ? List.of()
        : onRail(counts.contains((long) TWICE) ? CutTree.SIDE : CutTree.ROOT).toList();
  }

  private static Collection<Long> perBody(Missing of) {
    return of.bodies().stream()
        .collect(Collectors.groupingBy(body -> body, Collectors.counting()))
        .values();
  }

  private static Stream<String> onRail(String item) {
    return Stream.of(Step.HOT, Step.COLD).map(step -> item + ',' + step.id());
  }

  /** Item and step of a text that names a step of the rail, or an item. */
  private List<String> meanings(String text, Set<Species> likely) {
    return FileWord.find(Step.class, text)
        .filter(Step::isRail)
        .map(step -> List.of(CutTree.ROOT + ',' + step.id()))
        .or(() -> names.item(text, likely).map(item -> withStep(item).toList()))
        .or(() -> GuessWords.meaning(text).map(List::of))
        .orElse(List.of());
  }

  private static Stream<String> withStep(Item item) {
    return switch (item.kind()) {
      case BONE, FAT, WASTE -> Stream.of(item.id() + ",bin");
      case TRIM -> Stream.of(item.id() + ",tub");
      case CARCASE -> onRail(item.id());
      case ADDED -> Stream.of(item.id() + ",added");
      default -> Stream.of(item.id() + ",pack");
    };
  }

  /** By code the text beside it, if the export has an unused column that goes with the code. */
  private static Map<String, String> names(Map<String, Integer> positions, GuessTable table) {
    var best = new TreeMap<String, String>();
    Integer code = positions.get(Field.CODE.id());
    if (code == null || code >= table.columns().size()) {
      return best;
    }
    var codes = table.columns().get(code).cells();
    for (var column : table.columns()) {
      var names = new TreeMap<String, String>();
      boolean goes = !positions.containsValue(column.number() - 1);
      for (int row = 0; row < codes.size(); row++) {
        String name = column.cells().get(row);
        goes &= name.isEmpty() || name.equals(names.getOrDefault(codes.get(row), name));
        names.put(codes.get(row), name);
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
