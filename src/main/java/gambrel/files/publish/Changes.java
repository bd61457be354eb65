package gambrel.files.publish;

import gambrel.files.publish.Journal.Act;
import gambrel.files.publish.Journal.Step;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The output folder before a night, and the changes of the night in the order in which they become
 * visible. A written file is staged at once, so that a night's documents need not fit in memory.
 */
public final class Changes {
  private final PublishedFiles published;
  private final Optional<Publisher> publisher;
  private final List<Step> steps = new ArrayList<>();

  Changes(PublishedFiles published, Optional<Publisher> publisher) {
    this.published = published;
    this.publisher = publisher;
  }

  /** Changes that are counted and never written. */
  public static Changes unwritten(PublishedFiles published) {
    return new Changes(published, Optional.empty());
  }

  /** The content of a file before the night; empty if there is no such file. */
  public Optional<byte[]> read(String path) throws IOException {
    return published.read(path);
  }

  /** The content of a file as these changes leave it; empty if there is none, or it is not kept. */
  public Optional<byte[]> readNew(String path) throws IOException {
    if (steps.contains(new Step(Act.MOVE, path))) {
      return publisher.isPresent() ? publisher.get().staged(path) : Optional.empty();
    }
    return read(path);
  }

  /** The files below a folder before the night, sorted. */
  public List<String> list(String folder) throws IOException {
    return published.list(folder);
  }

  /** Writes a file, unless it has this content already. */
  public void write(String path, byte[] bytes) throws IOException {
    if (read(path).filter(before -> Arrays.equals(before, bytes)).isEmpty()) {
      if (publisher.isPresent()) {
        publisher.get().stage(path, bytes);
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
