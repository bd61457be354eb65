package gambrel.files.publish;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The published files of an output folder, as they are after its journal is carried out. */
public final class PublishedFiles {
  private final Path root;
  private final Map<String, Journal.Step> pending = new HashMap<>();

  /** The files under {@code root}, which need not exist. */
  public PublishedFiles(Path root) throws IOException {
    this.root = root;
    Journal.read(root).steps().forEach(step -> pending.put(step.path(), step));
  }

  /** The content of a file; empty if there is no such file. */
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

  /** Whether a file has this content; neither has to fit in memory. */
  boolean holds(String path, Content content) throws IOException {
    try (var in = open(path)) {
      var comparing = new ComparingStream(in);
      content.writeTo(comparing);
      return comparing.published.read() < 0;
    } catch (NoSuchFileException | Different e) {
      return false;
    }
  }

  /** Compares what is written to it with a published file. */
  private static final class ComparingStream extends OutputStream {
    private final InputStream published;

    ComparingStream(InputStream published) {
      this.published = new BufferedInputStream(published);
    }

    @Override
    public void write(int one) throws IOException {
      write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      byte[] read = published.readNBytes(length);
      if (!Arrays.equals(read, 0, read.length, bytes, from, from + length)) {
        throw new Different();
      }
    }
  }

  /** Ends the comparison at the first difference. */
  private static final class Different extends IOException {
    private static final long serialVersionUID = 1L;
  }
}
