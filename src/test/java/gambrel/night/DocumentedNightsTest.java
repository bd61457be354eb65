package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentedNightsTest {
  private static final Path MANUAL = Path.of("src/site/markdown");

  @TempDir private Path folder;

  private static String text(Path page) throws IOException {
    return Files.readString(page);
  }

  @Test
  void haveTheColumnsOfEveryDataFile() throws IOException {
    var shop = new NightShop(folder).beef("B1", "ann");
    assertEquals(0, shop.run(NightShop.NIGHT).exitCode());

    var told = text(MANUAL.resolve("figures.md")) + text(MANUAL.resolve("month.md"));
    try (var files = Files.list(shop.reports().resolve("data"))) {
      for (var file : files.toList()) {
        assertTrue(told.contains(file.getFileName().toString()), file::toString);
        assertTrue(told.contains(text(file).lines().findFirst().orElseThrow()), file::toString);
      }
    }
  }

  @Test
  void haveMonthFiguresThatAreAllExplained() throws IOException {
    var shop = new NightShop(folder).beef("B1", "ann");
    shop.run(NightShop.NIGHT);

    var told = text(MANUAL.resolve("month.md"));
    var figures = text(shop.reports().resolve("data/month-figures.csv")).lines().skip(1).toList();
    assertTrue(figures.size() > 10, figures::toString);
    for (var figure : figures) {
      var name = figure.split(",")[1];
      assertTrue(told.contains("`" + name + "`"), figure);
    }
  }

  @Test
  void knowEverySettingThatIsNamed() throws IOException {
    var section = Pattern.compile("(?ms)^## shop.properties$(.*?)^## ");
    var table = section.matcher(text(MANUAL.resolve("shop-folder.md"))).results().findFirst();
    var lines = table.orElseThrow().group(1).lines().filter(line -> line.startsWith("| `"));
    var shop = new NightShop(folder).beef("B1", "ann");
    int named = 0;
    for (var line : lines.toList()) {
      for (var key : line.split("\\|")[1].split("[`, ]+")) {
        if (!key.isEmpty()) {
          shop.add("shop.properties", key + "=");
          named++;
        }
      }
    }
    assertTrue(named > 15, "" + named);

    shop.run(NightShop.NIGHT);

    assertFalse(text(shop.reports().resolve("data/notices.csv")).contains("setting-bad"));
  }

  @Test
  void readAnExportByTheLayoutBesideIt() throws IOException {
    var blocks =
        Pattern.compile("(?ms)^### Semicolons and decimal commas$.*?```\n(.*?)```.*?```\n(.*?)```")
            .matcher(text(MANUAL.resolve("exports-and-layouts.md")))
            .results()
            .findFirst()
            .orElseThrow();
    var shop =
        new NightShop(folder)
            .add("bodies.csv", "B0713,beef,2026-07-20,ann,")
            .add("codes.csv", "302,mince,pack")
            .add("scales.csv", "bench1,0.005")
            .add("exports/bench1/2026-07-31.csv", blocks.group(1).split("\n"))
            .add("layouts/bench1.properties", blocks.group(2).split("\n"));

    shop.run("2026-08-10T02:00");

    var cuts = text(shop.reports().resolve("data/cuts.csv"));
    assertTrue(cuts.contains("B0713,mince,carcase,meat,pack,own,1.285,1,"), cuts);
  }
}
