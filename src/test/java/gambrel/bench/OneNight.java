package gambrel.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * How long one night takes, from the start of the process to its end: a shop of forty cattle a
 * month with a year behind it, a run of the night before, and three bodies cut since.
 *
 * <pre>OneNight FOLDER NIGHTS COMMAND...</pre>
 *
 * <p>FOLDER holds the made-up shop, which is made if it is not there, by COMMAND's own first night.
 * COMMAND is the program as its users start it, such as {@code target/image/bin/gambrel} or {@code
 * java -jar target/gambrel.jar}. Each night runs on a fresh copy of the folder.
 */
public final class OneNight {
  private static final YearMonth FIRST = YearMonth.of(2025, 9);
  private static final int MONTHS = 13;
  private static final int A_MONTH = 40;
  private static final int NEW = 3;

  /** The last day of a month on which is killed: what hangs is cut within the month. */
  private static final int LAST_KILL = 23;

  private static final long SEED = 40_13;
  private static final double MILLIS = 1000;

  private final List<BenchBody> bodies = bodies();
  private final LocalDate last = bodies.get(bodies.size() - 1).killed().plusDays(BenchShop.HANGING);
  private final Path shop;
  private final List<String> program;

  private OneNight(Path shop, List<String> program) {
    this.shop = shop;
    this.program = program;
  }

  /** Measures and prints a line a night, then the medians. */
  public static void main(String[] args) throws Exception {
    var folder = Path.of(args[0]).toAbsolutePath();
    var bench = new OneNight(folder.resolve("shop"), List.of(args).subList(2, args.length));
    bench.nightBefore();
    var took = new ArrayList<Took>();
    for (int i = 0; i < Integer.parseInt(args[1]); i++) {
      took.add(bench.night(folder.resolve("night")));
      print("night " + (i + 1), took.get(i));
    }
    print("median", Took.median(took));
  }

  private static void print(String what, Took took) {
    System.out.printf(
        Locale.ROOT,
        "%-9s %.2f s, %.2f s of processor%n",
        what,
        took.wall() / MILLIS,
        took.processor() / MILLIS);
  }

  private static List<BenchBody> bodies() {
    var random = new Random(SEED);
    var bodies = new ArrayList<BenchBody>();
    for (int m = 0; m < MONTHS; m++) {
      var days = days(FIRST.plusMonths(m));
      for (int i = 0; i < A_MONTH; i++) {
        int most = A_MONTH - NEW;
        var day = i < most ? days.get(i * (days.size() - 1) / most) : days.get(days.size() - 1);
        bodies.add(BenchBody.of(bodies.size() + 1, day, i % NEW, random));
      }
    }
    return bodies;
  }

  private static List<LocalDate> days(YearMonth month) {
    return IntStream.rangeClosed(1, LAST_KILL)
        .mapToObj(month::atDay)
        .filter(day -> day.getDayOfWeek() != DayOfWeek.SATURDAY)
        .filter(day -> day.getDayOfWeek() != DayOfWeek.SUNDAY)
        .toList();
  }

  /** All but the last day's exports; the pages that are known must be of this very program. */
  private void nightBefore() throws Exception {
    if (!Files.exists(shop)) {
      BenchShop.write(shop, bodies, last.minusDays(1));
    }
    Took.by(command(shop, last));
  }

  private Took night(Path copy) throws Exception {
    Folders.delete(copy);
    Folders.copy(shop, copy);
    BenchShop.write(copy, bodies, last);
    var took = Took.by(command(copy, last.plusDays(1)));
    int made = Folders.count(copy.resolve("reports/statements"));
    if (made - Folders.count(shop.resolve("reports/statements")) != NEW) {
      throw new IllegalStateException(made + " statements after the night");
    }
    return took;
  }

  private List<String> command(Path folder, LocalDate day) {
    var command = new ArrayList<>(program);
    command.addAll(List.of("run", folder.toString(), "--quiet", "--as-of", day + "T02:00"));
    return command;
  }
}
