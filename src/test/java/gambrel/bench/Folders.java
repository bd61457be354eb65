package gambrel.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

/** Copies, counts and deletes folders. */
final class Folders {
  private Folders() {}

  static void copy(Path from, Path to) throws IOException {
    for (var file : all(from)) {
      Files.copy(file, to.resolve(from.relativize(file)));
    }
  }

  static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      for (var file : all(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** Files in it, at any depth. */
  static int count(Path folder) throws IOException {
    return (int) all(folder).stream().filter(Files::isRegularFile).count();
  }

  private static List<Path> all(Path folder) throws IOException {
    try (var files = Files.walk(folder)) {
      return files.toList();
    }
  }
}
