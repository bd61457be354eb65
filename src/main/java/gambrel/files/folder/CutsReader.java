package gambrel.files.folder;

import gambrel.files.folder.ShopFolder.Table;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code cuts.csv} and lays it over the built-in cut trees. */
final class CutsReader {
  private CutsReader() {}

  /** The trees with the shop's own items; items that do not fit are left out. */
  static CutTrees read(ShopFolder folder, CutTrees builtIn) {
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
            if (item == rejected.item()) {
              row.addFault(row.bad(flaw).with("item", item.id()));
            }
          });
    }
    return extension.tree();
  }
}
