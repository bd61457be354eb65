package gambrel.intake;

import gambrel.cuts.CutTree;
import gambrel.cuts.CutTrees;
import gambrel.cuts.Item;
import gambrel.cuts.Kind;
import gambrel.cuts.Region;
import gambrel.cuts.Species;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
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
 */
public final class BuiltInCuts {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private BuiltInCuts() {}

  /** The trees of all species, named and nested as in a region. */
  public static CutTrees load(Region region) {
    var trees = new ArrayList<CutTree>();
    for (var species : Species.values()) {
      trees.add(CutTree.of(species, read(species, region)));
    }
    return CutTrees.from(trees);
  }

  private static List<Item> read(Species species, Region region) {
    return rows("/gambrel/cuts/" + species.id() + ".csv").stream()
        .map(row -> item(row, region))
        .toList();
  }

  /** The rows of a built-in table. */
  static List<CSVRecord> rows(String path) {
    try (var in = BuiltInCuts.class.getResourceAsStream(path);
        var parser = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Item item(CSVRecord row, Region region) {
    var count = row.get("count");
    return new Item(
        row.get("item"),
        regional(row, "parent", region),
        regional(row, "name", region),
        Kind.of(row.get("kind")).orElseThrow(),
        count.isEmpty() ? 1 : Integer.parseInt(count),
        row.get("unece").isEmpty() ? List.of() : List.of(row.get("unece").split(" ")));
  }

  private static String regional(CSVRecord row, String column, Region region) {
    var own = region == Region.AU ? "" : row.get(column + "_" + region.id());
    return own.isEmpty() ? row.get(column) : own;
  }
}
