package gambrel.files.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * Reads a file that another program may be writing. The content counts only if size, time and
 * identity of the file are the same after reading as before; else it is read again, three times at
 * most. Only regular files are read: a pipe or device may have no end.
 */
public final class SteadyFile {
  private static final int TRIES = 3;

  private SteadyFile() {}

  /** Opens a file. */
  public interface Opener {
    /** The file from its beginning. */
    InputStream open(Path path) throws IOException;
  }

  /** Reads a file from its beginning. */
  public interface Reading<T> {
    /** The content of the file. */
    T of(InputStream in) throws IOException;
  }

  /**
   * The content of a file; empty if it changes at every reading.
   *
   * @param opener usually {@link Files#newInputStream}
   */
  public static <T> Optional<T> read(Path path, Opener opener, Reading<T> reading)
      throws IOException {
    for (int i = 0; i < TRIES; i++) {
      var before = FileState.of(path);
      T content;
      try (var in = opener.open(path)) {
        content = reading.of(in);
      }
      if (FileState.of(path).equals(before)) {
        return Optional.of(content);
      }
    }
    return Optional.empty();
  }

  private record FileState(long size, long modified, Optional<Object> key) {
    private static FileState of(Path path) throws IOException {
      var file = Files.readAttributes(path, BasicFileAttributes.class);
      if (!file.isRegularFile()) {
        throw new FileSystemException(path.toString(), null, "no regular file");
      }
      return new FileState(
          file.size(), file.lastModifiedTime().toMillis(), Optional.ofNullable(file.fileKey()));
    }
  }
}
