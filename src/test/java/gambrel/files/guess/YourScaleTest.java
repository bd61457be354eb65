package gambrel.files.guess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.folder.ShopFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples of the manual's page on scales: an export, its layout, the rows as read. */
class YourScaleTest {
  private static final Path PAGE = Path.of("src/site/markdown/your-scale.md");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```\\n(.*?)^```$");
  private static final LocalDate TODAY = LocalDate.of(2026, 8, 5);

  @TempDir Path folder;

  static Stream<String> examples() throws IOException {
    return Stream.of(Files.readString(PAGE).split("(?m)^## ")).skip(1);
  }

  private static List<String> blocks(String example) {
    return BLOCK.matcher(example).results().map((MatchResult found) -> found.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void isReadAsThePageSays(String example) {
    var blocks = blocks(example);
    assertEquals(3, blocks.size(), example);
    var files =
        new ShopFiles(folder)
            .with("bodies.csv", "body,species,killed\nB17,beef,2026-07-27\nA12,beef,2026-07-26\n")
            .with("codes.csv", "code,item,step\n310,rump,pack\n320,chuck,pack\n900,bone,bin\n")
            .with("scales.csv", "scale,unit,division,capacity\nbench1,kg,0.005,15\n")
            .with("exports/bench1/a.txt", blocks.get(0));
    var proposed = ExportAssistant.of(folder, files.clean(), TODAY).lines();
    blocks
        .get(1)
        .lines()
        .forEach(
            line ->
                assertTrue(
                    proposed.stream().map(String::strip).anyMatch(line::equals),
                    () -> line + "\n" + String.join("\n", proposed)));

    files.with("layouts/bench1.properties", blocks.get(1));
    var read =
        ExportAssistant.of(folder, files.clean(), TODAY).lines().stream()
            .map(String::strip)
            .filter(line -> line.startsWith("= ") || line.matches("\\d+ rows .*"))
            .toList();

    assertEquals(blocks.get(2), String.join("\n", read) + "\n");
  }
}
