package gambrel.damage;

import gambrel.night.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The files of a shop folder, kept in memory.
 *
 * @param files contents by path
 */
record FolderCopy(SortedMap<String, byte[]> files) {
  /** Reads a folder. */
  static FolderCopy of(Path folder) {
    var files = new TreeMap<String, byte[]>();
    for (var path : Trees.files(folder)) {
      try {
        files.put(path, Files.readAllBytes(folder.resolve(path)));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return new FolderCopy(files);
  }

  /** The same with one file changed. */
  FolderCopy with(String path, byte[] bytes) {
    var changed = new TreeMap<>(files);
    changed.put(path, bytes);
    return new FolderCopy(changed);
  }

  /** Makes a folder hold these files and no other. */
  Path writeTo(Path folder) {
    try {
      clear(folder);
      for (var file : files.entrySet()) {
        var path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue());
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void clear(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (var walk = Files.walk(folder)) {
        for (var path : walk.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  /** Whether another folder holds the same. */
  boolean isSameAs(FolderCopy other) {
    return files.keySet().equals(other.files.keySet())
        && files.entrySet().stream()
            .allMatch(file -> Arrays.equals(file.getValue(), other.files.get(file.getKey())));
  }
}
