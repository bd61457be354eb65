package gambrel.files.publish;

import gambrel.files.publish.Journal.Act;
import gambrel.files.publish.Journal.Step;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The output folder before a night, as it is after its journal is carried out, and the changes of
 * the night in the order in which they become visible. A written file is staged at once, so that a
 * night's documents need not fit in memory.
 */
public final class Changes {
  private final Path root;
  private final Map<String, Act> pending = new HashMap<>();
  private final Optional<OutputFolder> folder;
  private final List<Step> steps = new ArrayList<>();

  Changes(Path root, Optional<OutputFolder> folder) throws IOException {
    this.root = root;
    Journal.read(root).steps().forEach(step -> pending.put(step.path(), step.act()));
    this.folder = folder;
  }

  /**
   * Changes of the folder {@code root}, which need not exist, that are counted and never written.
   */
  public static Changes unwritten(Path root) throws IOException {
    return new Changes(root, Optional.empty());
  }

  /** The content of a file before the night; empty if there is no such file. */
  public Optional<byte[]> read(String path) throws IOException {
    var act = pending.get(path);
    if (act == Act.REMOVE) {
      return Optional.empty();
    }
    var staged =
        act == null ? Optional.<byte[]>empty() : bytes(root.resolve(Journal.STAGING).resolve(path));
    return staged.isPresent() ? staged : bytes(root.resolve(path));
  }

  private static Optional<byte[]> bytes(Path file) throws IOException {
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /** The content of a file as these changes leave it; empty if there is none, or it is not kept. */
  public Optional<byte[]> readNew(String path) throws IOException {
    if (steps.contains(new Step(Act.MOVE, path))) {
      return folder.isPresent()
          ? bytes(root.resolve(Journal.STAGING).resolve(path))
          : Optional.empty();
    }
    return read(path);
  }

  /** The files below a folder before the night, relative to the output folder, sorted. */
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

  /** Writes a file, unless it has this content already. */
  public void write(String path, byte[] bytes) throws IOException {
    if (read(path).filter(before -> Arrays.equals(before, bytes)).isEmpty()) {
      if (folder.isPresent()) {
        folder.get().stage(path, bytes);
      }
      steps.add(new Step(Act.MOVE, path));
    }
  }

  /** Removes a file when the changes are published. */
  public void remove(String path) {
    steps.add(new Step(Act.REMOVE, path));
  }

  /** How many files change. */
  public int count() {
    return steps.size();
  }

  /** The files that are removed. */
  public Set<String> removed() {
    return steps.stream()
        .filter(step -> step.act() == Act.REMOVE)
        .map(Step::path)
        .collect(Collectors.toSet());
  }

  Journal journal() {
    return new Journal(steps);
  }
}
