package gambrel.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The output folder, held by one run at a time. The lock is the system's: it goes with the process.
 * Opening the folder finishes what a run that died had begun to publish.
 */
public final class OutputFolder implements AutoCloseable {
  private static final String LOCK = ".lock";

  private final Path root;
  private final FileChannel channel;
  private final FileLock lock;

  private OutputFolder(Path root, FileChannel channel, FileLock lock) {
    this.root = root;
    this.channel = channel;
    this.lock = lock;
  }

  /**
   * Opens the folder for one run, making it if need be.
   *
   * @throws OutputBusyException if another run holds it
   */
  public static OutputFolder open(Path root) throws IOException {
    Files.createDirectories(root);
    var channel =
        FileChannel.open(root.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      var lock = channel.tryLock();
      if (lock == null) {
        throw new OutputBusyException("another run holds this output folder");
      }
      new Journal(root).finish();
      return new OutputFolder(root, channel, lock);
    } catch (OverlappingFileLockException e) {
      channel.close();
      throw new OutputBusyException("another run holds this output folder");
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /** The content of a published file. */
  public static Optional<byte[]> read(Path root, String path) throws IOException {
    try {
      return Optional.of(Files.readAllBytes(root.resolve(path)));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /** The content of a published file. */
  public Optional<byte[]> read(String path) throws IOException {
    return read(root, path);
  }

  /** The files below a folder, relative to the output folder, sorted. */
  public List<String> list(String folder) throws IOException {
    var start = root.resolve(folder);
    if (!Files.isDirectory(start)) {
      return List.of();
    }
    var found = new TreeSet<String>();
    try (var files = Files.walk(start)) {
      files
          .filter(Files::isRegularFile)
          .forEach(file -> found.add(root.relativize(file).toString().replace('\\', '/')));
    }
    return List.copyOf(found);
  }

  /** Whether a file already has this content. */
  public boolean holds(String path, byte[] bytes) throws IOException {
    var file = root.resolve(path);
    return Files.isRegularFile(file)
        && Files.size(file) == bytes.length
        && Arrays.equals(Files.readAllBytes(file), bytes);
  }

  /** Publishes {@code changes}: all of them, even if the process dies on the way. */
  public void publish(Changes changes) throws IOException {
    new Journal(root).publish(changes);
  }

  @Override
  public void close() throws IOException {
    lock.release();
    channel.close();
  }
}
