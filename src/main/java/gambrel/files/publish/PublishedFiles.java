package gambrel.files.publish;

import gambrel.files.publish.Journal.Act;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The published files of an output folder, as they are after its journal is carried out. */
public final class PublishedFiles {
  private final Path root;
  private final Map<String, Act> pending = new HashMap<>();

  /** The files under {@code root}, which need not exist. */
  public PublishedFiles(Path root) throws IOException {
    this.root = root;
    Journal.read(root).steps().forEach(step -> pending.put(step.path(), step.act()));
  }

  /** The content of a file; empty if there is no such file. */
  public Optional<byte[]> read(String path) throws IOException {
    var act = pending.get(path);
    if (act == Act.REMOVE) {
      return Optional.empty();
    }
    var staged =
        act == null ? Optional.<byte[]>empty() : bytes(root.resolve(Journal.STAGING).resolve(path));
    return staged.isPresent() ? staged : bytes(root.resolve(path));
  }

  /** The content of a file; empty if there is none. */
  static Optional<byte[]> bytes(Path file) throws IOException {
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /** The files below a folder, relative to the output folder, sorted. */
  public List<String> list(String folder) throws IOException {
    var found = new TreeSet<String>();
    var start = root.resolve(folder);
    if (Files.isDirectory(start)) {
      try (var files = Files.walk(start)) {
        files
            .filter(Files::isRegularFile)
            .forEach(file -> found.add(root.relativize(file).toString().replace('\\', '/')));
      }
    }
    pending.forEach(
        (path, act) -> {
          if (act == Act.REMOVE) {
            found.remove(path);
          } else if (path.startsWith(folder + '/')) {
            found.add(path);
          }
        });
    return List.copyOf(found);
  }
}
