package gambrel.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.regex.Pattern;

/**
 * What a process took.
 *
 * @param wall from its start to its end, in milliseconds
 * @param processor of all its threads, in milliseconds
 */
record Took(long wall, long processor) {
  /** What the shell's {@code times} prints of its children, on its second line. */
  private static final Pattern TIMES = Pattern.compile("(\\d+)m([0-9.]+)s (\\d+)m([0-9.]+)s");

  /** Runs a command that must end with 0 or 1, as a night does. */
  static Took by(List<String> command) throws IOException, InterruptedException {
    var shell = new ArrayList<>(List.of("sh", "-c", "\"$@\"; code=$?; times; exit $code", "sh"));
    shell.addAll(command);
    long from = System.nanoTime();
    var process = new ProcessBuilder(shell).redirectErrorStream(true).start();
    var said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = process.waitFor();
    long wall = (System.nanoTime() - from) / 1_000_000;
    if (code > 1) {
      throw new IllegalStateException(command + " ended with " + code + ": " + said);
    }
    return new Took(wall, processor(said));
  }

  private static long processor(String said) {
    var times = TIMES.matcher(said.strip().lines().reduce((a, b) -> b).orElseThrow());
    if (!times.matches()) {
      throw new IllegalStateException(said);
    }
    return millis(times.group(1), times.group(2)) + millis(times.group(3), times.group(4));
  }

  private static long millis(String minutes, String seconds) {
    return Long.parseLong(minutes) * 60_000 + Math.round(Double.parseDouble(seconds) * 1000);
  }

  static Took median(Collection<Took> all) {
    return new Took(median(all, Took::wall), median(all, Took::processor));
  }

  private static long median(Collection<Took> all, ToLongFunction<Took> of) {
    return all.stream().mapToLong(of).sorted().skip(all.size() / 2).findFirst().orElseThrow();
  }
}
