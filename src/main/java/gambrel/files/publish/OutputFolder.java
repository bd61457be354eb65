package gambrel.files.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;

/**
 * The output folder, locked by one run at a time. The operating system releases the lock when the
 * process ends. Opening the folder finishes what a run that died had begun to publish.
 */
public final class OutputFolder implements AutoCloseable {
  private static final String LOCK = ".lock";

  private final FileChannel lock;
  private final Publisher publisher;
  private final PublishedFiles files;

  private OutputFolder(FileChannel lock, Path root, Disk disk) throws IOException {
    this.lock = lock;
    this.publisher = new Publisher(root, disk);
    publisher.finish(() -> {});
    this.files = new PublishedFiles(root);
  }

  /**
   * Opens the folder for one run, and makes it if it does not exist.
   *
   * @throws OutputBusyException if another run has it open
   */
  public static OutputFolder open(Path folder, Disk disk) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, Access.ofOutput(folder));
    }
    var root = folder.toRealPath();
    var options = Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    var lock = FileChannel.open(root.resolve(LOCK), options, Access.ofFileIn(root));
    try {
      if (lock.tryLock() == null) {
        throw new OutputBusyException();
      }
      return new OutputFolder(lock, root, disk);
    } catch (OverlappingFileLockException e) {
      lock.close();
      throw new OutputBusyException();
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** Whether a run has begun to publish into a folder, and the next run has to finish it. */
  public static boolean isUnderWay(Path folder) {
    return Journal.exists(folder);
  }

  /** A new set of changes. Those not published when the folder is closed are dropped. */
  public Changes changes() {
    return new Changes(files, Optional.of(publisher));
  }

  /**
   * Publishes changes of this folder: all of them or, if it fails before the journal is written,
   * none. If the process dies after that, the next run publishes the rest.
   *
   * @param done run after each change that has become visible
   */
  public void publish(Changes changes, Runnable done) throws IOException {
    publisher.publish(changes.journal(), done);
  }

  /** Drops what is not published, and releases the lock. */
  @Override
  public void close() throws IOException {
    try (lock) {
      publisher.undo();
    }
  }
}
