package gambrel.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs one command and exits with its code. */
  public static void main(String[] args) {
    var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, args));
  }

  /** Runs one command; returns its exit code. */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    var line = new CommandLine(new GambrelCommand());
    line.setOut(out);
    line.setErr(err);
    line.setExecutionExceptionHandler(
        (problem, command, parsed) -> {
          command.getErr().println("gambrel: " + problem);
          return ExitCode.FAILED;
        });
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }
}
