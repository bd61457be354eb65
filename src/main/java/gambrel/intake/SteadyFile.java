package gambrel.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * A file that somebody may be writing. What is read of it counts only if the file was the same
 * afterwards as before; a row that a scale adds in between costs a second reading, a copy that goes
 * on and on is given up.
 */
final class SteadyFile {
  private static final int TRIES = 3;

  private final Path path;
  private final Opener opener;

  private SteadyFile(Path path, Opener opener) {
    this.path = path;
    this.opener = opener;
  }

  /** A file of the file system. */
  static SteadyFile of(Path path) {
    return new SteadyFile(path, Files::newInputStream);
  }

  /** A file that is opened in another way. */
  static SteadyFile of(Path path, Opener opener) {
    return new SteadyFile(path, opener);
  }

  /** Opens a file. */
  interface Opener {
    /** The file from its beginning. */
    InputStream open(Path path) throws IOException;
  }

  /** Reads a file from its beginning. */
  interface Reading<T> {
    /** What it holds. */
    T of(InputStream in) throws IOException;
  }

  /** What the file holds; empty if it changes whenever it is read. */
  <T> Optional<T> read(Reading<T> reading) throws IOException {
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
