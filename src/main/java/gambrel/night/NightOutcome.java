package gambrel.night;

import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Severity;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.List;
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
      return waits(report.notices()) || !report.held().isEmpty() ? 1 : 0;
    }

    private static boolean waits(List<Notice> notices) {
      return notices.stream()
          .anyMatch(n -> n.severity() == Severity.STOP || n.severity() == Severity.HOLD);
    }
  }

  /**
   * The command line is wrong, or the shop folder cannot be read; nothing was published.
   *
   * @param why in a sentence
   */
  record Refused(String why) implements NightOutcome {
    @Override
    public int exitCode() {
      return 2;
    }
  }

  /** Another run holds the output folder. */
  record Busy() implements NightOutcome {
    @Override
    public int exitCode() {
      return 3;
    }
  }

  /**
   * A file could not be read or written; what was published before is unchanged.
   *
   * @param why in a sentence
   */
  record Failed(String why) implements NightOutcome {
    /** A failure of the file system; an exception's name becomes words if it has no message. */
    public static Failed of(IOException e) {
      if (e instanceof FileSystemException refused && refused.getReason() == null) {
        var kind = e.getClass().getSimpleName().replaceFirst("Exception$", "");
        var words = kind.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return new Failed(words + ", " + refused.getFile());
      }
      return new Failed(String.valueOf(e.getMessage()));
    }

    @Override
    public int exitCode() {
      return 4;
    }
  }
}
