package gambrel.cli;

import gambrel.trade.reckoning.Progress.Stage;
import java.util.List;

/** The words of the progress line. */
final class ProgressText {
  private static final long KILO = 1_000;
  private static final long MEGA = 1_000_000;

  /** From so many megabytes on, bytes are counted in megabytes. */
  private static final int ENOUGH = 10;

  private static final int PERCENT = 100;

  private ProgressText() {}

  /**
   * The line in fewer than {@code columns}: a full last one would begin a new line.
   *
   * @param done so much of the stage is done
   * @param total 0 where it is not counted
   */
  static String of(Stage stage, long done, long total, int columns) {
    String name = name(stage);
    String counted = total > 0 ? name + ": " + count(stage, Math.min(done, total), total) : name;
    int room = Math.max(0, columns - 1);
    return List.of(counted, name).stream()
        .filter(line -> line.length() <= room)
        .findFirst()
        .orElse(name.substring(0, Math.min(room, name.length())));
  }

  private static String name(Stage stage) {
    return switch (stage) {
      case READING -> "reading exports";
      case ROWS -> "judging rows";
      case BODIES -> "reckoning bodies";
      case RELEASES -> "reckoning releases";
      case CAUSES -> "looking for causes";
      case STATEMENTS -> "making statements";
      case MONTHS -> "making months";
      case TABLES -> "making data files";
      case PUBLISHING -> "publishing files";
    };
  }

  private static String count(Stage stage, long done, long total) {
    return switch (stage) {
      case READING ->
          total < ENOUGH * MEGA ? of(done, total, KILO) + " kB" : of(done, total, MEGA) + " MB";
      // A row is counted more than once, so that the number of rows would mislead.
      case ROWS -> PERCENT * done / total + " %";
      default -> of(done, total, 1);
    };
  }

  /** Done is rounded down, and all of it up. */
  private static String of(long done, long total, long unit) {
    long all = (total + unit - 1) / unit;
    return (done == total ? all : done / unit) + " of " + all;
  }
}
