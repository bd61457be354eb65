package gambrel.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RandomShopTest {
  @TempDir Path folder;

  private TreeMap<String, String> write(String name, long seed) throws IOException {
    var shop = folder.resolve(name);
    RandomShop.write(shop, seed, CsvTrees::of);
    var files = new TreeMap<String, String>();
    try (var walk = Files.walk(shop)) {
      for (var file : walk.filter(Files::isRegularFile).toList()) {
        files.put(shop.relativize(file).toString(), Files.readString(file));
      }
    }
    return files;
  }

  @Test
  void theSeedDecidesEveryByte() throws IOException {
    assertEquals(write("a", 5), write("b", 5));
    assertNotEquals(write("c", 5), write("d", 6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyRowCountsOnceAndEveryFigureAgreesWithItself(long seed) throws IOException {
    var moments = RandomShop.write(folder, seed, CsvTrees::of);
    for (var moment : moments) {
      var tables = Oracle.compute(folder, moment, CsvTrees.of(folder));
      var rows = tables.table("rows.csv");
      for (var row : rows.subList(1, rows.size())) {
        int sum = row.subList(2, 6).stream().mapToInt(Integer::parseInt).sum();
        assertEquals(Integer.parseInt(row.get(1)), sum, row.get(0));
      }
      assertEquals(0, OracleDiff.compare(tables, written(tables)).differences().size());
    }
  }

  private Path written(OracleTables tables) throws IOException {
    var data = Files.createDirectories(folder.resolve("out"));
    for (var table : tables.tables().entrySet()) {
      var text = new StringBuilder();
      table.getValue().forEach(row -> text.append(String.join(",", row)).append('\n'));
      Files.writeString(data.resolve(table.getKey()), text.toString());
    }
    return data;
  }

  @Test
  void theDiffNamesTheCellThatDiffers() throws IOException {
    var moments = RandomShop.write(folder, 3, CsvTrees::of);
    var tables = Oracle.compute(folder, moments.get(3), CsvTrees.of(folder));
    var data = written(tables);
    var rows = Files.readString(data.resolve("rows.csv"));
    Files.writeString(data.resolve("rows.csv"), rows.replaceFirst(",\\d+\n$", ",977\n"));

    var found = OracleDiff.compare(tables, data).differences();

    assertEquals(1, found.size());
    assertTrue(found.get(0).contains("set_aside: expected "), found.get(0));
    assertTrue(found.get(0).endsWith("was 977"), found.get(0));
  }

  @Test
  void aFewShopsReachEveryStateAndMostReasons() throws IOException {
    var seen = new TreeSet<String>();
    for (long seed = 1; seed <= 12; seed++) {
      var shop = folder.resolve("s" + seed);
      for (var moment : RandomShop.write(shop, seed, CsvTrees::of).subList(1, 4)) {
        for (var row : Oracle.compute(shop, moment, CsvTrees.of(shop)).table("bodies.csv")) {
          seen.add(row.get(4));
          seen.addAll(java.util.List.of(row.get(30).split(";")));
        }
      }
    }
    for (var wanted :
        "open held issued closed cancelled batch-open batch-out row-set-aside scale-failed"
            .split(" ")) {
      assertTrue(seen.contains(wanted), wanted + " not in " + seen);
    }
  }
}
