package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The manual's walk from an empty folder to the first night, done as the page says. */
class FirstNightTest {
  private static final Path PAGE = Path.of("src/site/markdown/first-night.md");
  private static final Path EXPORTS = Path.of("src/test/resources/gambrel/first-night/exports");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```\\n(.*?)^```$");

  /** What the person who follows the page sets. */
  private static final List<String> SETTINGS =
      List.of("name=Hill Boning Room", "currency=GBP", "unit=kg", "zone=Europe/London");

  private static final String NIGHT = "2026-08-05T02:00";

  @TempDir Path work;

  private String said;

  private int gambrel(String... arguments) {
    var text = new StringWriter();
    var out = new PrintWriter(text);
    int code = Main.run(out, out, arguments);
    said = text.toString();
    return code;
  }

  private int check(String... options) {
    return gambrel(
        Stream.concat(Stream.of("check", shop().toString(), "--as-of", NIGHT), Stream.of(options))
            .toArray(String[]::new));
  }

  private Path shop() {
    return work.resolve("shop");
  }

  private void add(String file, String rows) throws IOException {
    Files.writeString(shop().resolve(file), rows, StandardOpenOption.APPEND);
  }

  private void assertSaid(String lines) {
    lines.lines().forEach(line -> assertTrue(said.contains(line), () -> line + "\n\n" + said));
  }

  @Test
  void thePageGoesFromAnEmptyFolderToFiveStatements() throws IOException {
    var blocks =
        BLOCK.matcher(Files.readString(PAGE)).results().map(found -> found.group(1)).toList();
    assertEquals(10, blocks.size());

    assertEquals(0, gambrel("start", "--region", "uk", shop().toString()));
    set(SETTINGS);
    Files.createDirectories(shop().resolve("exports/hall"));
    for (String day : List.of("J28.TXT", "J29.TXT", "J30.TXT")) {
      Files.copy(EXPORTS.resolve("hall").resolve(day), shop().resolve("exports/hall/" + day));
    }
    add("customers.csv", blocks.get(1));
    add("bodies.csv", blocks.get(2));
    add("charges.csv", blocks.get(3));

    assertEquals(1, check("--save"));
    assertSaid(blocks.get(5));
    assertSaid(blocks.get(6));
    add("layouts/hall.properties", answersOfTheDate() + blocks.get(6));

    assertEquals(0, check(), said);
    assertSaid(blocks.get(7));

    assertEquals(0, gambrel("run", shop().toString(), "--as-of", NIGHT), said);
    assertSaid(blocks.get(9).replace("shop/reports", shop() + "/reports"));
    assertTrue(Files.exists(shop().resolve("reports/statements/ann/L31-r1.pdf")));
  }

  /** The first answer to the question about the date above the rows. */
  private String answersOfTheDate() {
    return said.lines()
        .map(String::strip)
        .dropWhile(line -> !line.startsWith("above.date="))
        .takeWhile(line -> !line.startsWith("= "))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  /** Puts lines in place of those with their keys. */
  private void set(List<String> settings) throws IOException {
    var file = shop().resolve("shop.properties");
    var lines = new ArrayList<>(Files.readAllLines(file));
    for (String setting : settings) {
      String key = setting.substring(0, setting.indexOf('=') + 1);
      lines.removeIf(line -> line.startsWith(key));
      lines.add(setting);
    }
    Files.write(file, lines);
  }
}
