package gambrel.files.folder;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Facts.Offal;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the built-in cut trees, one CSV resource a species. The columns {@code name} and {@code
 * parent} hold the Australian form; a regional column left blank means the same.
 *
 * <p>Item ids and the way parts nest follow the cut descriptions of the UN/ECE standards for bovine
 * and ovine meat (ECE/TRADE/326 and 308). The column {@code unece} holds only numbers seen in
 * print: in the UN/ECE working papers of 2012 and retail cut standard of 2013, and in the Handbook
 * of Australian Meat, whose numbers the UN/ECE standards share. Regional names and breaks are
 * common practice of the trade.
 *
 * <p>The columns {@code food}, {@code bone}, {@code vertebra}, {@code minced} and {@code offal} are
 * the item's {@link Facts}; a blank cell takes the fact of the item's parent. What has bone or
 * vertebrae in it is common practice of the trade.
 */
public final class BuiltInCuts {
  private BuiltInCuts() {}

  /** The trees of all species with the names and parents of a region. */
  public static CutTrees load(Region region) {
    var trees = new ArrayList<CutTree>();
    for (var species : Species.values()) {
      var rows = BuiltInTable.rows("cuts/" + species.id());
      trees.add(CutTree.of(species, rows.stream().map(row -> item(row, region)).toList()));
    }
    return CutTrees.from(trees);
  }

  private static Item item(CSVRecord row, Region region) {
    var count = row.get("count");
    return new Item(
        row.get("item"),
        regional(row, "parent", region),
        regional(row, "name", region),
        Kind.of(row.get("kind")).orElseThrow(),
        count.isEmpty() ? 1 : Integer.parseInt(count),
        row.get("unece").isEmpty() ? List.of() : List.of(row.get("unece").split(" ")),
        false,
        facts(row));
  }

  private static Facts facts(CSVRecord row) {
    return new Facts(
        BuiltInTable.cell(row, "food", food -> food),
        BuiltInTable.cell(row, "bone", BuiltInCuts::isYes),
        BuiltInTable.cell(row, "vertebra", BuiltInCuts::isYes),
        BuiltInTable.cell(row, "minced", BuiltInCuts::isYes),
        BuiltInTable.cell(row, "offal", line -> Offal.valueOf(line.toUpperCase(Locale.ROOT))));
  }

  private static boolean isYes(String cell) {
    return switch (cell) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw new IllegalArgumentException(cell + " is neither yes nor no");
    };
  }

  private static String regional(CSVRecord row, String column, Region region) {
    var own = region == Region.AU ? "" : row.get(column + "_" + region.id());
    return own.isEmpty() ? row.get(column) : own;
  }
}
