package gambrel.run;

import gambrel.publish.Changes;
import gambrel.publish.Disk;
import gambrel.publish.OutputBusyException;
import gambrel.publish.OutputFolder;
import gambrel.publish.PublishedFiles;
import gambrel.reckoning.Reckoner;
import gambrel.reckoning.Waiting;
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

  /** The same for somebody who waits. */
  public NightlyRun(Inputs inputs, Documents documents, Progress progress) {
    this(inputs, documents, Disk.SYSTEM, progress);
  }

  /** The same on a disk of its own. */
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
  public Outcome run(Path root, OffsetDateTime asOf, Collection<YearMonth> months) {
    try (var out = OutputFolder.open(root, disk);
        var changes = new Changes(root)) {
      var work = work(out.files(), changes, asOf, months);
      var staged = progress.begin(Stage.PUBLISHING, changes.count());
      out.publish(changes, () -> staged.accept(1));
      return new Outcome.Done(work.report());
    } catch (OutputBusyException e) {
      return new Outcome.Busy();
    } catch (RefusedException e) {
      return new Outcome.Refused(e.getMessage());
    } catch (IOException e) {
      return Outcome.Failed.of(e);
    }
  }

  /**
   * Does all that a run does but to publish.
   *
   * @param root the output folder whose register counts
   */
  public Outcome check(Path root, OffsetDateTime asOf) {
    try (var changes = Changes.inMemory()) {
      var work = work(new PublishedFiles(root), changes, asOf, List.of());
      return new Outcome.Done(work.report());
    } catch (RefusedException e) {
      return new Outcome.Refused(e.getMessage());
    } catch (IOException e) {
      return Outcome.Failed.of(e);
    }
  }

  private NightWork work(
      PublishedFiles published,
      Changes changes,
      OffsetDateTime asOf,
      Collection<YearMonth> months)
      throws IOException, RefusedException {
    var store = new RegisterStore(published, inputs.shop().settings());
    var known = store.load();
    var lost = SideBySide.begin(known, store::lost);
    var night = new Reckoner(inputs.shop(), inputs.exports(), waiting()).at(asOf);
    var shelf = PageShelf.of(published);
    var files = new NightFiles(published, shelf, changes);
    var work = new NightWork(night, documents.remembering(shelf), files, store, progress);
    progress.begin(Stage.CAUSES, 0);
    var notices = NightNoticeList.of(inputs, night);
    work.make(notices, known, lost.result(), months);
    return work;
  }

  private Waiting waiting() {
    return new Waiting(
        progress.of(Stage.ROWS), progress.of(Stage.BODIES), progress.of(Stage.RELEASES));
  }
}
