package gambrel.files.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * Reads a file that another program may be writing. What is read counts only if the file was the
 * same afterwards as before; else it is read again, three times at most.
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
    /** What it holds. */
    T of(InputStream in) throws IOException;
  }

  /**
   * What a file holds; empty if it changes whenever it is read.
   *
   * @param opener how it is opened: usually {@link Files#newInputStream}
   */
  public static <T> Optional<T> read(Path path, Opener opener, Reading<T> reading)
      throws IOException {
    for (int i = 0; i < TRIES; i++) {
      var before = Look.at(path);
      T content;
      try (var in = opener.open(path)) {
        content = reading.of(in);
      }
      if (Look.at(path).equals(before)) {
        return Optional.of(content);
      }
    }
    return Optional.empty();
  }

  /** What tells that a file is another one than before. */
  private record Look(long size, long modified, Optional<Object> key) {
    private static Look at(Path path) throws IOException {
      var file = Files.readAttributes(path, BasicFileAttributes.class);
      return new Look(
          file.size(), file.lastModifiedTime().toMillis(), Optional.ofNullable(file.fileKey()));
    }
  }
}
