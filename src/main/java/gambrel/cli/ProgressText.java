package gambrel.cli;

import gambrel.trade.reckoning.Progress.Stage;
import java.util.List;

/** Makes the text of the progress line. */
final class ProgressText {
  private static final long KILOBYTE = 1_000;
  private static final long MEGABYTE = 1_000_000;

  /** From so many megabytes on, bytes are printed as megabytes. */
  private static final int LEAST_MEGABYTES = 10;

  private static final int PERCENT = 100;

  private ProgressText() {}

  /**
   * The line, shorter than {@code columns}: some terminals begin a new line after the last column.
   *
   * @param done how much of the stage is done
   * @param total 0 if the stage is not counted
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
          total < LEAST_MEGABYTES * MEGABYTE
              ? of(done, total, KILOBYTE) + " kB"
              : of(done, total, MEGABYTE) + " MB";
      // A row is counted once for each pass over it, so a number of rows would be wrong.
      case ROWS -> PERCENT * done / total + " %";
      default -> of(done, total, 1);
    };
  }

  /** The part done is rounded down, the total up. */
  private static String of(long done, long total, long unit) {
    long all = (total + unit - 1) / unit;
    return (done == total ? all : done / unit) + " of " + all;
  }
}
