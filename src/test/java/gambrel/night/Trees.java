package gambrel.night;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Lists and reads the files of folders. */
public final class Trees {
  private Trees() {}

  /** All files below a folder, relative to it, sorted; none if there is no folder. */
  public static List<String> files(Path root) {
    if (!Files.isDirectory(root)) {
      return List.of();
    }
    try (var walk = Files.walk(root)) {
      return walk.filter(Files::isRegularFile)
          .map(file -> root.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All folders below a folder, relative to it, sorted. */
  public static List<String> folders(Path root) {
    try (var walk = Files.walk(root)) {
      return walk.filter(Files::isDirectory)
          .map(folder -> root.relativize(folder).toString().replace('\\', '/'))
          .filter(name -> !name.isEmpty())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The content of all published files except the program's own. */
  public static SortedMap<String, String> published(Path root) {
    var tree = new TreeMap<String, String>();
    for (var file : files(root)) {
      if (!List.of(".lock", ".pages", ".register").contains(file)) {
        tree.put(file, text(root.resolve(file)));
      }
    }
    return tree;
  }

  /** When each published file was last written. */
  public static SortedMap<String, String> times(Path root) {
    return published(root).keySet().stream()
        .collect(Collectors.toMap(f -> f, f -> time(root.resolve(f)), (a, b) -> a, TreeMap::new));
  }

  /** Sets every file's time back, so that later writes can be seen. */
  public static void age(Path root) {
    try {
      for (var file : files(root)) {
        Files.setLastModifiedTime(root.resolve(file), FileTime.fromMillis(1_000_000));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String time(Path file) {
    try {
      return Files.getLastModifiedTime(file).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A file as text, one character for each byte. */
  public static String text(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The lines of a text file. */
  public static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
