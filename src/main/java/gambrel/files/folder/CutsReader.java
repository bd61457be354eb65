package gambrel.files.folder;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.NoticeCode;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code cuts.csv} and lays it over the built-in cut trees. */
final class CutsReader {
  private static final Columns COLUMNS =
      Columns.of("cuts.csv", "species", "item", "parent", "name", "kind").and("count", "unece");

  private final CutTrees builtIn;
  private final Map<Species, Map<ShopRow, Item>> extra = new EnumMap<>(Species.class);

  private CutsReader(CutTrees builtIn) {
    this.builtIn = builtIn;
  }

  /** The trees with the shop's own items; items that do not fit are left out. */
  static CutTrees read(ShopFolder folder, CutTrees builtIn) {
    var reader = new CutsReader(builtIn);
    folder.each(COLUMNS, reader::read);
    return reader.lay();
  }

  private void read(ShopRow row) {
    var species = row.need("species", CellTypes.word(Species.class));
    String id = row.need("item", CellTypes::item);
    var item =
        builtIn
            .of(species)
            .find(id)
            .map(known -> changed(known, row))
            .orElseGet(() -> fresh(id, row));
    extra.computeIfAbsent(species, s -> new LinkedHashMap<>()).put(row, item);
  }

  private static Item fresh(String id, ShopRow row) {
    return new Item(
        id,
        row.need("parent", CellTypes::item),
        row.needText("name"),
        row.need("kind", CellTypes.word(Kind.class)),
        row.get("count", CellTypes::head).orElse(1),
        codes(row),
        true,
        Facts.INHERITED);
  }

  /** A blank cell leaves a known item as it was. */
  private static Item changed(Item known, ShopRow row) {
    String name = row.text("name");
    var codes = codes(row);
    return new Item(
        known.id(),
        row.get("parent", CellTypes::item).orElse(known.parent()),
        name.isEmpty() ? known.name() : name,
        row.get("kind", CellTypes.word(Kind.class)).orElse(known.kind()),
        row.get("count", CellTypes::head).orElse(known.count()),
        codes.isEmpty() ? known.unece() : codes,
        !name.isEmpty() && !name.equals(known.name()),
        known.facts());
  }

  private static List<String> codes(ShopRow row) {
    return row.get("unece", CellTypes::ids).orElse(List.of());
  }

  private CutTrees lay() {
    var trees = builtIn;
    for (var ofSpecies : extra.entrySet()) {
      trees = trees.with(extended(builtIn.of(ofSpecies.getKey()), ofSpecies.getValue()));
    }
    return trees;
  }

  private static CutTree extended(CutTree tree, Map<ShopRow, Item> extra) {
    var extension = tree.extend(List.copyOf(extra.values()));
    for (var rejected : extension.rejected()) {
      extra.forEach(
          (row, item) -> {
            if (item == rejected.item()) {
              row.mark(
                  NoticeCode.SHOP_ROW_BAD, "FLAW." + rejected.flaw(), "item", rejected.item().id());
            }
          });
    }
    return extension.tree();
  }
}
