package gambrel.files.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The output folder, locked by one run at a time. The operating system releases the lock when the
 * process ends. Opening the folder finishes what a run that died had begun to publish.
 */
public final class OutputFolder implements AutoCloseable {
  private static final String LOCK = ".lock";
  private static final String BUSY = "another run holds this output folder";

  /**
   * The folders that this process has open. The lock alone is not enough: some systems release all
   * locks of a process on a file as soon as the process closes the file anywhere.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path root;
  private final FileChannel channel;
  private final FileLock lock;
  private final Publisher publisher;
  private final PublishedFiles files;

  private OutputFolder(FileChannel channel, FileLock lock, Path root, Disk disk)
      throws IOException {
    this.root = root;
    this.channel = channel;
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
    if (!HELD.add(root)) {
      throw new OutputBusyException(BUSY);
    }
    try {
      return lock(root, disk);
    } catch (IOException | RuntimeException e) {
      HELD.remove(root);
      throw e;
    }
  }

  private static OutputFolder lock(Path root, Disk disk) throws IOException {
    var channel =
        FileChannel.open(root.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      var lock = channel.tryLock();
      if (lock == null) {
        throw new OutputBusyException(BUSY);
      }
      return new OutputFolder(channel, lock, root, disk);
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /** The published files. */
  public PublishedFiles files() {
    return files;
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

  @Override
  public void close() throws IOException {
    try (channel) {
      publisher.undo();
      lock.release();
    } finally {
      HELD.remove(root);
    }
  }
}
