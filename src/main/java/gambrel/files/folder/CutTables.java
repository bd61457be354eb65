package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.folder.ShopFolder.Table;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Extension;
import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Severity;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Step;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the tables of cuts and of the codes for them. */
final class CutTables {
  private CutTables() {}

  /** The built-in trees with the items of {@code cuts.csv}; items that do not fit are left out. */
  static CutTrees cuts(ShopFolder folder, CutTrees builtIn) {
    var extra = new EnumMap<Species, Map<ShopRow, Item>>(Species.class);
    folder.each(
        Table.of("cuts.csv", "species item parent name kind", "count unece"),
        row -> {
          var species = row.need("species", CellTypes.word(Species.class));
          String id = row.need("item", CellTypes::item);
          var item = item(id, builtIn.of(species).find(id), row);
          extra.computeIfAbsent(species, s -> new LinkedHashMap<>()).put(row, item);
        });
    var trees = builtIn;
    for (var ofSpecies : extra.entrySet()) {
      trees = trees.with(extended(builtIn.of(ofSpecies.getKey()), ofSpecies.getValue()));
    }
    return trees;
  }

  /** The item of a row; a blank cell of a known item keeps its value. */
  private static Item item(String id, Optional<Item> known, ShopRow row) {
    if (known.isEmpty()) {
      List.of("parent", "name", "kind").forEach(row::needText);
    }
    String name = row.text("name");
    return new Item(
        id,
        row.get("parent", CellTypes::item).or(() -> known.map(Item::parent)).orElseThrow(),
        name.isEmpty() ? known.orElseThrow().name() : name,
        row.get("kind", CellTypes.word(Kind.class)).or(() -> known.map(Item::kind)).orElseThrow(),
        row.get("count", CellTypes::head).or(() -> known.map(Item::count)).orElse(1),
        row.get("unece", CellTypes::ids).or(() -> known.map(Item::unece)).orElse(List.of()),
        !name.isEmpty() && !known.map(Item::name).equals(Optional.of(name)),
        known.map(Item::facts).orElse(Facts.INHERITED));
  }

  private static CutTree extended(CutTree tree, Map<ShopRow, Item> extra) {
    var extension = tree.extend(List.copyOf(extra.values()));
    for (var rejected : extension.rejected()) {
      var flaw = "FLAW." + rejected.flaw();
      extra.forEach(
          (row, item) -> {
            var notice = row.bad(flaw).with("item", item.id());
            if (item == rejected.item() && rejected.flaw() == Extension.Flaw.TWICE) {
              // The first of two rows of an item counts.
              row.mark(notice);
            } else if (item == rejected.item()) {
              row.addFault(notice);
            }
          });
    }
    return extension.tree();
  }

  /** The codes of {@code codes.csv} in file order. */
  static List<ScaleCode> codes(ShopFolder folder, Known known) {
    var codes =
        folder.byId(
            Table.of("codes.csv", "code item step", "description tare tare_each nominal"),
            (id, row) -> code(row, folder, known));
    return List.copyOf(codes.values());
  }

  private static ScaleCode code(ShopRow row, ShopFolder folder, Known known) {
    String pattern = row.need("code", CutTables::pattern);
    var step = row.need("step", CellTypes.word(Step.class));
    if (step.movesMass() && step != Step.ADDED) {
      row.needText("item");
    }
    return new ScaleCode(
        pattern,
        items(row, step, folder, known),
        step,
        row.text("description"),
        row.get("tare", CellTypes::weight).orElse(Weight.ZERO),
        row.get("tare_each", CellTypes::yesNo).orElse(false),
        row.get("nominal", CellTypes::weight));
  }

  /**
   * The items of a code, by their ids or names; one whose row in cuts.csv cannot be read is known
   * even so.
   */
  private static List<String> items(ShopRow row, Step step, ShopFolder folder, Known known) {
    var items =
        row.get("item", CellTypes::items).orElse(List.of()).stream()
            .flatMap(item -> named(row, item, known).stream())
            .distinct()
            .toList();
    items.stream().filter(item -> !isUnread(item, folder)).forEach(item -> known.item(row, item));
    known.species().stream()
        .filter(s -> items.stream().filter(i -> known.cuts().of(s).find(i).isPresent()).count() > 1)
        .map(species -> Phrase.of("SPECIES." + species))
        .forEach(s -> row.mark(row.cell(row.bad("TWO_ITEMS"), "item").with("species", s)));
    if (step == Step.PACK && !items.isEmpty() && CutTree.USUALLY_BIN.containsAll(items)) {
      row.mark(row.cell(row.bad("GOES_HOME"), "item").as(Severity.NOTE));
    }
    return items;
  }

  /** The items that a text means, with a note if it is the name and not the id of one. */
  private static List<String> named(ShopRow row, String text, Known known) {
    var items = known.named(text);
    if (!known.isCalled(items, text)) {
      var called = items.stream().map(known::withName).toList();
      var taken = row.unknown("item", ".ITEM_NAMED").with("cell", text).with("nearest", called);
      row.mark(taken.as(Severity.NOTE));
    }
    return items;
  }

  /** A code; only the last character may stand for more of them. */
  private static String pattern(CellTypes types, String text) {
    return BadCell.unless("EARLY_STAR", types.id(text), code -> code.matches("[^*]*\\*?"));
  }

  private static boolean isUnread(String item, ShopFolder folder) {
    return folder.unread().stream()
        .filter(row -> row.place().file().equals("cuts.csv"))
        .anyMatch(row -> row.legible("item", CellTypes::item).equals(Optional.of(item)));
  }
}
