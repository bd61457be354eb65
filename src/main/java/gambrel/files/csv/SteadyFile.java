package gambrel.files.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.apache.commons.io.function.IOFunction;

/**
 * Reads a file that another program may be writing. The content counts only if size, time and
 * identity of the file are the same after reading as before; else it is read again, three times at
 * most. Only regular files are read: a pipe or device may have no end.
 */
public final class SteadyFile {
  private static final int TRIES = 3;

  private SteadyFile() {}

  /**
   * The content of a file; empty if it changes at every reading.
   *
   * @param opener usually {@link Files#newInputStream}
   * @param reading reads a file from its beginning
   */
  public static <T> Optional<T> read(
      Path path, IOFunction<Path, InputStream> opener, IOFunction<InputStream, T> reading)
      throws IOException {
    for (int i = 0; i < TRIES; i++) {
      var once = readOnce(path, opener, reading);
      if (once.steady()) {
        return Optional.of(once.content());
      }
    }
    return Optional.empty();
  }

  /**
   * What one reading of a file gave.
   *
   * @param steady whether the file stayed as it was meanwhile
   */
  public record Once<T>(T content, boolean steady) {}

  /** As {@link #read}, but the file is read once only, and its content returned in any case. */
  public static <T> Once<T> readOnce(
      Path path, IOFunction<Path, InputStream> opener, IOFunction<InputStream, T> reading)
      throws IOException {
    var before = FileState.of(path);
    T content;
    try (var in = opener.apply(path)) {
      content = reading.apply(in);
    }
    return new Once<>(content, FileState.of(path).equals(before));
  }

  private record FileState(long size, FileTime modified, Optional<Object> key) {
    private static FileState of(Path path) throws IOException {
      var file = Files.readAttributes(path, BasicFileAttributes.class);
      if (!file.isRegularFile()) {
        throw new FileSystemException(path.toString(), null, "no regular file");
      }
      return new FileState(
          file.size(), file.lastModifiedTime(), Optional.ofNullable(file.fileKey()));
    }
  }
}
