package gambrel.cli;

import gambrel.run.Stage;
import java.util.List;

/** The words of the line that says how far a night is. */
final class ProgressText {
  private static final long KILO = 1_000;
  private static final long MEGA = 1_000_000;

  /** From so many on the larger unit tells enough. */
  private static final int ENOUGH = 10;

  private static final int MINUTE = 60;
  private static final int HALF_HOUR = 30;

  private ProgressText() {}

  /** The line in fewer than {@code columns}: a full last one would begin a new line. */
  static String of(Reached reached, int columns) {
    String name = name(reached.stage());
    String counted = reached.total() > 0 ? name + ": " + count(reached) : name;
    long left = reached.secondsLeft();
    String whole =
        left > 0 ? counted + ", about " + rounded(left) + " left in this stage" : counted;
    int room = Math.max(0, columns - 1);
    return List.of(whole, counted, name).stream()
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

  private static String count(Reached reached) {
    long total = reached.total();
    long done = Math.min(reached.done(), total);
    return switch (reached.stage()) {
      case READING ->
          total < ENOUGH * MEGA ? of(done, total, KILO) + " kB" : of(done, total, MEGA) + " MB";
      // Each row is gone through more than once, so that their number would mislead.
      case ROWS -> reached.percent() + " %";
      default -> of(done, total, 1);
    };
  }

  /** All of the total is only said of all. */
  private static String of(long done, long total, long unit) {
    long all = (total + unit - 1) / unit;
    return (done == total ? all : done / unit) + " of " + all;
  }

  /** Always up, to steps that grow with it. */
  private static String rounded(long seconds) {
    if (seconds <= MINUTE - ENOUGH) {
      return up(seconds, ENOUGH) + " s";
    }
    long minutes = up(seconds, MINUTE) / MINUTE;
    if (minutes <= ENOUGH) {
      return minutes + " min";
    }
    if (minutes <= MINUTE) {
      return up(minutes, ENOUGH / 2) + " min";
    }
    long halves = up(minutes, HALF_HOUR) / HALF_HOUR;
    return halves / 2 + (halves % 2 == 0 ? "" : ".5") + " h";
  }

  private static long up(long number, long step) {
    return (number + step - 1) / step * step;
  }
}
