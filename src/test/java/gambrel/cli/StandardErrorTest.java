package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process finds out whether its standard error is a terminal; each test starts one. */
class StandardErrorTest {
  private static final Path SCRIPT = Path.of("/usr/bin/script");
  private static final Map<String, String> USUAL = Map.of("TERM", "xterm");

  @TempDir private Path folder;

  /** Writes to a file whether it has a terminal. */
  static final class Child {
    private Child() {}

    public static void main(String[] args) throws IOException {
      Files.writeString(
          Path.of(args[0]), ProgressLine.isStandardErrorATerminal() ? "terminal" : "none");
    }
  }

  private List<String> child() {
    return List.of(
        ProcessHandle.current().info().command().orElseThrow(),
        "-cp",
        System.getProperty("java.class.path"),
        Child.class.getName(),
        folder.resolve("answer").toString());
  }

  private String found(List<String> command, Map<String, String> environment) throws Exception {
    var builder = new ProcessBuilder(command);
    builder.environment().remove("TERM");
    builder.environment().putAll(environment);
    var error = folder.resolve("error");
    builder.redirectOutput(folder.resolve("out").toFile()).redirectError(error.toFile());
    var process = builder.start();
    process.getOutputStream().close();
    assertEquals(0, process.waitFor());
    assertEquals("", Files.readString(error));
    return Files.readString(folder.resolve("answer"));
  }

  /** Runs on a terminal, with the output redirected. */
  private String onTerminal(Map<String, String> environment, String redirected) throws Exception {
    assumeTrue(Files.isExecutable(SCRIPT) && Files.isDirectory(Path.of("/proc/self")));
    var quoted = new ArrayList<String>();
    child().forEach(word -> quoted.add("'" + word + "'"));
    var line = String.join(" ", quoted) + redirected;
    return found(List.of(SCRIPT.toString(), "-qec", line, "/dev/null"), environment);
  }

  @Test
  void aFileIsNoTerminal() throws Exception {
    assertEquals("none", found(child(), USUAL));
  }

  @Test
  void aTerminalIsOneHoweverOutputAndInputAreRedirected() throws Exception {
    assertEquals("terminal", onTerminal(USUAL, " </dev/null >/dev/null"));
  }

  @Test
  void errorsSentElsewhereAreNotOnTheTerminal() throws Exception {
    assertEquals("none", onTerminal(USUAL, " 2>/dev/null"));
    assertEquals("none", onTerminal(USUAL, " 2>&1 >/dev/null | cat"));
  }

  @Test
  void aTerminalThatCannotDrawALineAnewIsNone() throws Exception {
    assertEquals("none", onTerminal(Map.of("TERM", "dumb"), ""));
    assertEquals("none", onTerminal(Map.of("TERM", ""), ""));
  }
}
