package gambrel.cli;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The standard error of the process. Java cannot tell whether it is a terminal, so the system's
 * shell is asked. If that fails it counts as no terminal.
 */
final class StandardError implements Terminal {
  private static final Path LINK = Path.of("/proc/self/fd/2");
  private static final String SHELL = "/bin/sh";

  /** Prints rows and columns of the terminal, or nothing if the system does not know them. */
  private static final String QUESTION = "[ -t 2 ] || exit 1; stty size <&2 2>/dev/null; exit 0";

  private static final int USUAL = 80;

  @Override
  public OptionalInt columns() {
    String kind = System.getenv("TERM");
    if (kind == null || kind.isBlank() || kind.equals("dumb") || isElsewhere()) {
      return OptionalInt.empty();
    }
    try {
      return ask();
    } catch (IOException | InterruptedException | SecurityException e) {
      return OptionalInt.empty();
    }
  }

  /** Whether it is a file, a pipe or a socket, which can be seen without starting a process. */
  private static boolean isElsewhere() {
    try {
      var target = Files.readSymbolicLink(LINK).toString();
      return !target.startsWith("/dev/pts/") && !target.startsWith("/dev/tty");
    } catch (IOException | UnsupportedOperationException | SecurityException e) {
      return !Files.isExecutable(Path.of(SHELL));
    }
  }

  private static OptionalInt ask() throws IOException, InterruptedException {
    var process = new ProcessBuilder(SHELL, "-c", QUESTION).redirectError(Redirect.INHERIT).start();
    process.getOutputStream().close();
    String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
    return process.waitFor() == 0
        ? OptionalInt.of(narrower(width(answer), number(System.getenv("COLUMNS"))))
        : OptionalInt.empty();
  }

  private static int width(String rowsAndColumns) {
    String[] numbers = rowsAndColumns.strip().split(" ");
    return numbers.length == 2 ? number(numbers[1]) : 0;
  }

  private static int number(String text) {
    return text != null && text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
  }

  /** The narrower of the two, since the variable may come from another window. */
  private static int narrower(int window, int variable) {
    return IntStream.of(window, variable).filter(width -> width > 0).min().orElse(USUAL);
  }
}
