package gambrel.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * A made-up plant with as many export rows as asked for: so many cattle every working day, chilled
 * overnight, hung for a week, cut to packs, tubs and bins that add up to the body but for a bench
 * loss. The same seed writes the same files.
 */
public final class BenchShop {
  /** The first day of killing. */
  static final LocalDate FIRST = LocalDate.of(2016, 1, 4);

  /** Days from kill to bench. */
  static final int HANGING = 7;

  private final Path folder;
  private final int perDay;
  private final Random random;

  private BenchShop(Path folder, int perDay, long seed) {
    this.folder = folder;
    this.perDay = perDay;
    this.random = new Random(seed);
  }

  /**
   * Writes a shop folder.
   *
   * @param rows about so many export rows
   * @param perDay bodies killed a working day
   * @return the bodies
   */
  public static int write(Path folder, long rows, int perDay, long seed) throws IOException {
    int bodies = (int) Math.max(1, Math.round(rows / (double) BenchBody.ROWS));
    new BenchShop(folder, perDay, seed).write(bodies);
    return bodies;
  }

  private void write(int bodies) throws IOException {
    var list = new ArrayList<BenchBody>();
    for (var day = FIRST; list.size() < bodies; day = day.plusDays(1)) {
      if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
        for (int i = 0; i < perDay && list.size() < bodies; i++) {
          list.add(BenchBody.of(list.size() + 1, day, i, random));
        }
      }
    }
    write(folder, list, LocalDate.MAX);
  }

  /**
   * Writes a shop folder of these bodies, with the exports of no later day than {@code last}.
   *
   * @param bodies in the order of their kill
   */
  static void write(Path folder, List<BenchBody> bodies, LocalDate last) throws IOException {
    Files.createDirectories(folder.resolve("exports"));
    BenchOffice.write(folder, bodies);
    var floor = new BenchFloor(bodies);
    bodies.stream()
        .map(BenchBody::killed)
        .flatMap(d -> Stream.of(d, d.plusDays(1), d.plusDays(HANGING)))
        .distinct()
        .sorted()
        .filter(day -> !day.isAfter(last))
        .forEach(day -> export(folder, floor, day));
  }

  private static void export(Path folder, BenchFloor floor, LocalDate day) {
    floor
        .work(day)
        .forEach(
            (scale, rows) -> {
              try {
                var file = folder.resolve("exports/" + scale + '-' + day + ".csv");
                Files.writeString(file, rows);
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
  }

  /** {@code FOLDER ROWS [BODIES-A-DAY]}. */
  public static void main(String[] args) throws IOException {
    int perDay = args.length > 2 ? Integer.parseInt(args[2]) : 24;
    int bodies = write(Path.of(args[0]), Long.parseLong(args[1]), perDay, 20161);
    System.out.println(bodies + " bodies");
  }
}
