package gambrel.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The output folder, held by one run at a time. The lock is the system's: it goes with the process.
 * Opening the folder finishes what a run that died had begun to publish.
 */
public final class OutputFolder implements AutoCloseable {
  private static final String LOCK = ".lock";

  private final FileChannel channel;
  private final FileLock lock;
  private final Publisher publisher;
  private final PublishedFiles files;

  private OutputFolder(FileChannel channel, FileLock lock, Path root, Disk disk)
      throws IOException {
    this.channel = channel;
    this.lock = lock;
    this.publisher = new Publisher(root, disk);
    publisher.finish();
    this.files = new PublishedFiles(root);
  }

  /**
   * Opens the folder for one run, making it if need be.
   *
   * @throws OutputBusyException if another run holds it
   */
  public static OutputFolder open(Path folder, Disk disk) throws IOException {
    Files.createDirectories(folder);
    var root = folder.toRealPath();
    var channel =
        FileChannel.open(root.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      var lock = channel.tryLock();
      if (lock == null) {
        throw new OutputBusyException("another run holds this output folder");
      }
      return new OutputFolder(channel, lock, root, disk);
    } catch (OverlappingFileLockException e) {
      channel.close();
      throw new OutputBusyException("another run holds this output folder");
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /** What is published. */
  public PublishedFiles files() {
    return files;
  }

  /** Publishes {@code changes}: all of them, even if the process dies on the way. */
  public void publish(Changes changes) throws IOException {
    publisher.publish(changes);
  }

  @Override
  public void close() throws IOException {
    lock.release();
    channel.close();
  }
}
