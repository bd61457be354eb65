package gambrel.night;

import gambrel.files.publish.OutputFolder;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Severity;
import gambrel.trade.sending.Letter;
import gambrel.trade.sending.Unsent;
import java.io.IOException;
import java.io.StreamCorruptedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a run ended. */
public sealed interface NightOutcome {
  /** The process exit code. */
  int exitCode();

  /** Work on an output folder that may fail. */
  interface Attempt {
    /** Does the work. */
    NightOutcome make() throws IOException, RefusedException;
  }

  /** How the work on the output folder {@code root} ends. */
  static NightOutcome of(Path root, Attempt attempt) {
    try {
      return attempt.make();
    } catch (OutputFolder.BusyException e) {
      return Stopped.BUSY;
    } catch (StreamCorruptedException | RefusedException e) {
      return Stopped.refused(e);
    } catch (IOException e) {
      return Stopped.failed(e, root);
    }
  }

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
   * Statements were mailed.
   *
   * @param sent the messages that the server took, or that were written to the outbox
   * @param waiting how many messages still wait to go, because the server put them off, the limit
   *     is reached, or the sending stopped
   * @param unsent the statements that wait for a person
   * @param stopped why the sending stopped; empty if it did not
   * @param overLimit whether nothing went because the messages are more than the limit
   */
  record Mailed(
      List<Letter> sent,
      int waiting,
      List<Unsent> unsent,
      Optional<String> stopped,
      boolean overLimit)
      implements NightOutcome {
    @Override
    public int exitCode() {
      return stopped.isPresent() ? 4 : overLimit || !unsent.isEmpty() ? 1 : 0;
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
