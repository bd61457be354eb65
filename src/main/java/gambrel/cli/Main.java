package gambrel.cli;

import gambrel.night.Documents;
import gambrel.night.PdfDocuments;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/** Starts the program. */
public final class Main {
  private Main() {}

  /** Runs one command and exits with its code. */
  public static void main(String[] args) {
    // No digit or word follows the machine's language.
    Locale.setDefault(Locale.ROOT);
    if (args.length > 1 && List.of("run", "check").contains(args[0])) {
      // Loading takes as long as reading the exports, and both can run at a time.
      PdfDocuments.getReady(args[0].equals("run"));
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
    var program = new Program(maker, isTerminal, out, err);
    int code = run(program, List.of(args));
    out.flush();
    err.flush();
    return code;
  }

  private static int run(Program program, List<String> words) {
    try {
      return program.run(words);
    } catch (RuntimeException | VirtualMachineError | LinkageError e) {
      return failed(program.err(), e);
    }
  }

  private static int failed(PrintWriter err, Throwable problem) {
    err.println(
        "gambrel: failed; the last published state stands, or the next run completes the new one: "
            + problem);
    return 4;
  }
}
