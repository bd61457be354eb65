package gambrel.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What a night changes in the output folder, in the order in which it becomes visible. */
public final class Changes implements AutoCloseable {
  /** What an ordinary night makes fits many times. */
  private static final long MOST_IN_MEMORY = 64L << 20;

  private final Path folder;
  private final long most;
  private final List<Change> changes = new ArrayList<>();
  private long inMemory;
  private Scratch scratch;

  /** One file written or removed. */
  sealed interface Change {
    /** Relative to the output folder. */
    String path();
  }

  record Write(String path, Content content) implements Change {}

  record Remove(String path) implements Change {}

  /**
   * No changes yet.
   *
   * @param folder where documents wait on the disk once there are too many for memory
   */
  public Changes(Path folder) {
    this(folder, MOST_IN_MEMORY);
  }

  /** No changes yet; none will ever wait on the disk. */
  public static Changes inMemory() {
    return new Changes(Path.of(""), Long.MAX_VALUE);
  }

  /** The same with another number of bytes that wait in memory. */
  Changes(Path folder, long most) {
    this.folder = folder;
    this.most = most;
  }

  /** Writes a file anew. */
  public void write(String path, byte[] bytes) throws IOException {
    if (inMemory + bytes.length > most) {
      if (scratch == null) {
        scratch = Scratch.in(folder);
      }
      write(path, scratch.add(bytes));
    } else {
      inMemory += bytes.length;
      write(path, Content.of(bytes));
    }
  }

  /** Writes a file anew with content that is made as it is written. */
  public void write(String path, Content content) {
    changes.add(new Write(path, content));
  }

  /** Removes a file. */
  public void remove(String path) {
    changes.add(new Remove(path));
  }

  /** Whether nothing changes. */
  public boolean isEmpty() {
    return changes.isEmpty();
  }

  /** How many files change. */
  public int count() {
    return changes.size();
  }

  /** The files that are removed. */
  public Set<String> removed() {
    return changes.stream()
        .filter(change -> change instanceof Remove)
        .map(Change::path)
        .collect(Collectors.toSet());
  }

  List<Change> list() {
    return List.copyOf(changes);
  }

  /** Lets go of what waits on the disk: the changes can be published no more. */
  @Override
  public void close() throws IOException {
    if (scratch != null) {
      scratch.close();
    }
  }
}
