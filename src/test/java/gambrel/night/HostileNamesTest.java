package gambrel.night;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.PrintedPages;
import gambrel.pages.render.pdf.Attachment;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HostileNamesTest {
  @TempDir private Path folder;

  static List<String> names() {
    return List.of(
        "<b>Ann</b><script>x</script> & \"Q\"",
        "${shop.name} <#stop \"x\"> [=1+1]",
        "ab\u202Ecd\u200F\u2066ef",
        "n".repeat(300),
        "../../C:\\x",
        "CON",
        "nul. ",
        "=1+1",
        "+1",
        "-1+cmd",
        "@SUM(A1)");
  }

  private static String cell(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  @ParameterizedTest
  @MethodSource("names")
  void printsThemAsTextInSafeFilesAndInertCells(String name) throws Exception {
    var shop = new NightShop(folder.resolve("shop"));
    shop.replace("shop.properties", "Hollow Lane Meats", name.replace("\\", "\\\\"));
    shop.add("customers.csv", cell(name) + ',' + cell(name));
    shop.replace("bodies.csv", "customer,outcome", "customer,outcome,mark,note");
    shop.replace("charges.csv", "Kill", cell(name));
    shop.add("cuts.csv", "species,item,parent,name,kind", "beef,rump,," + cell(name) + ",");
    shop.add("batches.csv", "batch,product", cell(name) + ',' + cell(name));
    shop.beef(name, name);
    shop.replace("bodies.csv", "2026-03-02," + body(name) + ",", marked(name));

    var inputs = Inputs.read(shop.write(), Progress.NONE);
    var documents = PdfDocuments.of(folder.resolve("shop"), inputs.shop().settings());
    var outcome =
        new NightlyRun(inputs, documents)
            .run(shop.reports(), NightShop.moment(NightShop.NIGHT), List.of());

    assertTrue(outcome instanceof NightOutcome.Done, outcome::toString);
    var files = Trees.files(folder);
    assertTrue(files.stream().allMatch(file -> file.startsWith("shop/")), files::toString);
    var statements = files.stream().filter(file -> file.contains("/statements/")).toList();
    assertEquals(1, statements.size(), files::toString);
    assertTrue(
        statements.get(0).matches("shop/reports/statements/[\\w%~-]+/[\\w%~-]+\\.pdf"),
        statements::toString);
    var text = squeeze(String.join("", PrintedPages.of(bytes(statements.get(0)))));
    assertTrue(text.contains(squeeze("For " + name)), text);
    var attached = Attachment.read(bytes(statements.get(0)), RegisterStore.FIGURES);
    assertInert("figures", new StringReader(new String(attached.orElseThrow(), UTF_8)));
    var data = folder.resolve("shop/reports/data");
    for (var file : Trees.files(data)) {
      assertInert(file, Files.newBufferedReader(data.resolve(file)));
    }
  }

  private static String body(String name) {
    return name.matches("[^\",;\n]*") ? name : cell(name);
  }

  private static String marked(String name) {
    return "2026-03-02," + body(name) + ",," + cell(name) + ',' + cell(name);
  }

  private byte[] bytes(String file) throws IOException {
    return Files.readAllBytes(folder.resolve(file));
  }

  private static String squeeze(String text) {
    return text.replaceAll("[\\s\\u00a0\\u202E\\u200F\\u2066]+", "");
  }

  private static void assertInert(String file, Reader text) throws IOException {
    try (var rows = CSVFormat.RFC4180.parse(text)) {
      for (var row : rows) {
        for (var cell : row) {
          var isNumber = cell.matches("-?[\\d.]+");
          assertFalse(!isNumber && cell.matches("(?s)[=+\\-@\t\r].*"), file + ": " + cell);
        }
      }
    }
  }
}
