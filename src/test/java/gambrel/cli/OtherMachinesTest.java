package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.NightShop;
import gambrel.night.Trees;
import java.io.File;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program publishes the same bytes on machines whose Java is another one. */
class OtherMachinesTest {
  private static final Pattern MODULES = Pattern.compile("--add-modules ([\\w.,]+)");

  @TempDir private Path folder;

  @Test
  void aMachineThatCountsInOtherDigitsPublishesTheSameBytes() throws Exception {
    publishesTheSame(
        System.getProperty("java.class.path"),
        "-Duser.language=ar",
        "-Duser.country=EG",
        "-Duser.extensions=u-nu-arab");
  }

  @Test
  void theModulesAndLibrariesOfTheImageAreEnough() throws Exception {
    var modules = MODULES.matcher(Files.readString(Path.of("pom.xml")));
    assertTrue(modules.find());

    publishesTheSame(
        Path.of("target/classes")
            + File.pathSeparator
            + Files.readString(Path.of("target/runtime-class-path")).strip(),
        "--limit-modules",
        modules.group(1));
  }

  /** Runs the same night in this Java and in a process of its own. */
  private void publishesTheSame(String classPath, String... options) throws Exception {
    var shop = new NightShop(folder.resolve("shop")).beef("B1", "ann").write().toString();
    var here = folder.resolve("here");
    var there = folder.resolve("there");
    var silent = new PrintWriter(new StringWriter());
    assertEquals(0, Main.run(silent, silent, arguments(shop, here)));

    var command = new ArrayList<>(List.of(ProcessHandle.current().info().command().orElseThrow()));
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", classPath, Main.class.getName()));
    command.addAll(List.of(arguments(shop, there)));

    assertEquals(0, new ProcessBuilder(command).inheritIO().start().waitFor());
    assertEquals(Trees.published(here), Trees.published(there));
  }

  private static String[] arguments(String shop, Path out) {
    return new String[] {
      "run", shop, "--as-of", NightShop.NIGHT, "--out", out.toString(), "--quiet"
    };
  }
}
