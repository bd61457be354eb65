package gambrel.cli;

import gambrel.night.Documents;
import gambrel.night.PdfDocuments;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import picocli.CommandLine;

/** Starts the program. */
public final class Main {
  private Main() {}

  /** Runs one command and exits with its code. */
  public static void main(String[] args) {
    // No digit or word follows the machine's language.
    Locale.setDefault(Locale.ROOT);
    if (args.length > 1 && args[0].equals("run")) {
      // Loading takes as long as reading the exports, and both can run at a time.
      PdfDocuments.getReady();
    }
    var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(PdfDocuments::of, ProgressLine::isStandardErrorATerminal, out, err, args));
  }

  /** Runs one command without a terminal; returns its exit code. */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    return run(PdfDocuments::of, () -> false, out, err, args);
  }

  /**
   * As above, with the documents of {@code maker}; {@code isTerminal} is asked about {@code err}.
   */
  static int run(
      Documents.Maker maker,
      BooleanSupplier isTerminal,
      PrintWriter out,
      PrintWriter err,
      String... args) {
    var line = new CommandLine(new GambrelCommand(maker, isTerminal));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setOut(out);
    line.setErr(err);
    line.setExecutionExceptionHandler((problem, command, parsed) -> failed(err, problem));
    int code = execute(line, err, args);
    out.flush();
    err.flush();
    return code;
  }

  private static int execute(CommandLine line, PrintWriter err, String... args) {
    try {
      return line.execute(args);
    } catch (VirtualMachineError | LinkageError e) {
      return failed(err, e);
    }
  }

  private static int failed(PrintWriter err, Throwable problem) {
    err.println(
        "gambrel: failed; the last published state stands, or the next run completes the new one: "
            + problem);
    return 4;
  }
}
