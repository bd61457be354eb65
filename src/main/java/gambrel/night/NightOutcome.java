package gambrel.night;

import gambrel.files.publish.OutputFolder;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Severity;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Locale;

/** How a run ended. */
public sealed interface NightOutcome {
  /** The process exit code. */
  int exitCode();

  /**
   * The night was made, and published if this was asked for.
   *
   * @param report what the morning sheet says
   */
  record Done(MorningReport report) implements NightOutcome {
    @Override
    public int exitCode() {
      boolean waits =
          report.notices().stream()
              .map(notice -> notice.severity())
              .anyMatch(severity -> severity == Severity.STOP || severity == Severity.HOLD);
      return waits || !report.held().isEmpty() ? 1 : 0;
    }
  }

  /**
   * The run was refused or failed.
   *
   * @param exitCode 2 to 4
   * @param why in sentences
   */
  record Stopped(int exitCode, String why) implements NightOutcome {
    /** Another run holds the output folder. */
    static final Stopped BUSY = new Stopped(3, "another run holds this output folder.");

    /** The command line is wrong, or the shop folder cannot be read; nothing was published. */
    public static Stopped refused(Exception e) {
      return new Stopped(2, e.getMessage() + ".");
    }

    /** A file could not be read or written; {@code root} is the output folder. */
    public static Stopped failed(IOException e, Path root) {
      String stands =
          OutputFolder.isUnderWay(root)
              ? "when a part was published; the next run publishes the rest"
              : "and the last published state stands";
      return new Stopped(
          4,
          "failed, %s: %s. See that the disk has room and may be written to, then run again."
              .formatted(stands, message(e)));
    }

    /** An exception's name becomes words if it has no message but a file's name. */
    private static String message(IOException e) {
      if (e instanceof FileSystemException refused && refused.getReason() == null) {
        var kind = e.getClass().getSimpleName().replaceFirst("Exception$", "");
        var words = kind.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return words + ", " + refused.getFile();
      }
      return String.valueOf(e.getMessage());
    }
  }
}
