package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Disk;
import gambrel.files.publish.OutputBusyException;
import gambrel.files.publish.OutputFolder;
import gambrel.files.publish.PublishedFiles;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import java.io.IOException;
import java.io.StreamCorruptedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The nightly job: makes a night and publishes it at once. */
public final class NightlyRun {
  private final Inputs inputs;
  private final Documents documents;
  private final Disk disk;
  private final Progress progress;

  /** A run over a shop folder that has been read. */
  public NightlyRun(Inputs inputs, Documents documents) {
    this(inputs, documents, Disk.SYSTEM, Progress.NONE);
  }

  /** As above, and reports to {@code progress}. */
  public NightlyRun(Inputs inputs, Documents documents, Progress progress) {
    this(inputs, documents, Disk.SYSTEM, progress);
  }

  /** A run on a given disk. */
  NightlyRun(Inputs inputs, Documents documents, Disk disk) {
    this(inputs, documents, disk, Progress.NONE);
  }

  private NightlyRun(Inputs inputs, Documents documents, Disk disk, Progress progress) {
    this.inputs = inputs;
    this.documents = documents;
    this.disk = disk;
    this.progress = progress;
  }

  /**
   * Runs and publishes into {@code root}.
   *
   * @param months the months to summarise; none means every month that has a body
   */
  public NightOutcome run(Path root, OffsetDateTime asOf, Collection<YearMonth> months) {
    return outcome(
        () -> {
          try (var out = OutputFolder.open(root, disk)) {
            var changes = out.changes();
            var report = make(changes, asOf, months);
            var visible = progress.begin(Progress.Stage.PUBLISHING, changes.count());
            out.publish(changes, () -> visible.accept(1));
            return report;
          }
        });
  }

  /**
   * Makes a night without publishing it.
   *
   * @param root the output folder with the register
   */
  public NightOutcome check(Path root, OffsetDateTime asOf) {
    return outcome(() -> make(Changes.unwritten(new PublishedFiles(root)), asOf, List.of()));
  }

  /** A night that may fail. */
  private interface Attempt {
    MorningReport make() throws IOException, RefusedException;
  }

  private static NightOutcome outcome(Attempt attempt) {
    try {
      return new NightOutcome.Done(attempt.make());
    } catch (OutputBusyException e) {
      return new NightOutcome.Busy();
    } catch (StreamCorruptedException | RefusedException e) {
      return new NightOutcome.Refused(e.getMessage());
    } catch (IOException e) {
      return NightOutcome.Failed.of(e);
    }
  }

  /**
   * Writes the statement of the customer's body that was cut last, to look at the templates.
   *
   * @throws RefusedException if no customer's body was cut, or a template cannot be used
   */
  public void preview(Path file, Night night) throws RefusedException, IOException {
    var account =
        night.bodies().values().stream()
            .filter(a -> !a.customers().isEmpty() && a.balance().lastCut().isPresent())
            .max(
                Comparator.comparing(
                    a -> a.balance().lastCut().orElseThrow(), OffsetDateTime.timeLineOrder()))
            .orElseThrow(
                () ->
                    new RefusedException(
                        "no customer's body has been cut yet, so there is no preview"));
    var planned = new Planned(account.customers().get(0), account, Optional.empty(), false);
    var unchanged = Optional.of(List.<Figures.Change>of());
    try {
      byte[] figures = RegisterStore.bytes(RegisterStore.read(planned, night));
      Files.write(file, documents.statement(night, planned, unchanged, figures));
    } catch (TemplateProblem problem) {
      throw new RefusedException(NoticeWords.ENGLISH.of(Page.phrase(problem)));
    }
  }

  private MorningReport make(Changes changes, OffsetDateTime asOf, Collection<YearMonth> months)
      throws IOException, RefusedException {
    return new NightWork(inputs, documents, changes, progress).make(asOf, months);
  }
}
