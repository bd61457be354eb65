package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.night.NightShop;
import gambrel.night.Trees;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the program writes does not follow the machine's language, whose digits may be others. */
class MachineLanguageTest {
  @TempDir private Path folder;

  @Test
  void aMachineThatCountsInOtherDigitsPublishesTheSameBytes() throws Exception {
    var shop = new NightShop(folder.resolve("shop")).beef("B1", "ann");
    var here = folder.resolve("here");
    var there = folder.resolve("there");
    var silent = new PrintWriter(new StringWriter());
    var path = shop.write().toString();
    assertEquals(0, Main.run(silent, silent, arguments(path, here)));

    var process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElseThrow(),
                "-Duser.language=ar",
                "-Duser.country=EG",
                "-Duser.extensions=u-nu-arab",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName())
            .inheritIO();
    process.command().addAll(List.of(arguments(path, there)));

    assertEquals(0, process.start().waitFor());
    assertEquals(Trees.published(here), Trees.published(there));
  }

  private static String[] arguments(String shop, Path out) {
    return new String[] {
      "run", shop, "--as-of", NightShop.NIGHT, "--out", out.toString(), "--quiet"
    };
  }
}
