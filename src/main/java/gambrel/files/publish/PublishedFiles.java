package gambrel.files.publish;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The published files of an output folder, as they are once its journal is carried out. */
public final class PublishedFiles {
  private final Path root;
  private final Map<String, Journal.Step> pending = new HashMap<>();

  /** The files under {@code root}, which need not exist. */
  public PublishedFiles(Path root) throws IOException {
    this.root = root;
    Journal.read(root).steps().forEach(step -> pending.put(step.path(), step));
  }

  /** The content of a file; empty where there is none. */
  public Optional<byte[]> read(String path) throws IOException {
    try (var in = open(path)) {
      return Optional.of(in.readAllBytes());
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  private InputStream open(String path) throws IOException {
    var step = pending.get(path);
    if (step instanceof Journal.Remove) {
      throw new NoSuchFileException(path);
    }
    if (step instanceof Journal.Move move) {
      try {
        return Files.newInputStream(root.resolve(Journal.STAGING).resolve(move.staged()));
      } catch (NoSuchFileException e) {
        return Files.newInputStream(root.resolve(path));
      }
    }
    return Files.newInputStream(root.resolve(path));
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
    for (var step : pending.values()) {
      if (step instanceof Journal.Remove) {
        found.remove(step.path());
      } else if (step.path().startsWith(folder + '/')) {
        found.add(step.path());
      }
    }
    return List.copyOf(found);
  }

  /** Whether a file already has this content, neither of which need fit in memory. */
  boolean holds(String path, Content content) throws IOException {
    try (var in = open(path)) {
      var comparing = new ComparingStream(in);
      content.writeTo(comparing);
      return comparing.isAtEnd();
    } catch (NoSuchFileException | ComparingStream.Different e) {
      return false;
    }
  }
}
