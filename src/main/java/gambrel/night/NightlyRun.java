package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Disk;
import gambrel.files.publish.OutputBusyException;
import gambrel.files.publish.OutputFolder;
import gambrel.files.publish.PublishedFiles;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;

/** The nightly job: compute all, make all documents, publish once. */
public final class NightlyRun {
  private final Inputs inputs;
  private final Documents documents;
  private final Disk disk;
  private final Progress progress;

  /** A run over a shop folder that has been read. */
  public NightlyRun(Inputs inputs, Documents documents) {
    this(inputs, documents, Progress.NONE);
  }

  /** As above, and reports to {@code progress}. */
  public NightlyRun(Inputs inputs, Documents documents, Progress progress) {
    this(inputs, documents, Disk.SYSTEM, progress);
  }

  /** As above, on a given disk. */
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
    try (var out = OutputFolder.open(root, disk)) {
      var changes = out.changes();
      var report = report(changes, asOf, months);
      var visible = progress.begin(Progress.Stage.PUBLISHING, changes.count());
      out.publish(changes, () -> visible.accept(1));
      return new NightOutcome.Done(report);
    } catch (OutputBusyException e) {
      return new NightOutcome.Busy();
    } catch (RefusedException e) {
      return new NightOutcome.Refused(e.getMessage());
    } catch (IOException e) {
      return NightOutcome.Failed.of(e);
    }
  }

  /**
   * Does all that a run does but to publish.
   *
   * @param root the output folder whose register counts
   */
  public NightOutcome check(Path root, OffsetDateTime asOf) {
    try {
      var changes = Changes.unwritten(new PublishedFiles(root));
      return new NightOutcome.Done(report(changes, asOf, List.of()));
    } catch (RefusedException e) {
      return new NightOutcome.Refused(e.getMessage());
    } catch (IOException e) {
      return NightOutcome.Failed.of(e);
    }
  }

  private MorningReport report(Changes changes, OffsetDateTime asOf, Collection<YearMonth> months)
      throws IOException, RefusedException {
    var store = new RegisterStore(changes, inputs.shop().settings());
    var known = store.load();
    var lost = OrderedParallel.begin(() -> store.lost(known));
    var night = new Reckoner(inputs.shop(), inputs.exports(), progress).at(asOf);
    progress.begin(Progress.Stage.CAUSES, 0);
    var notices = NightNoticeList.of(inputs, night);
    return new NightWork(night, documents, PageCache.of(changes), changes, store, progress)
        .make(notices, known, OrderedParallel.result(lost), months);
  }
}
