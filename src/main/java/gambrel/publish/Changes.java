package gambrel.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What a night changes in the output folder, in the order in which it becomes visible. */
public final class Changes {
  /** One file written or removed. */
  sealed interface Change {
    /** Relative to the output folder. */
    String path();
  }

  record Write(String path, byte[] bytes) implements Change {}

  record Remove(String path) implements Change {}

  private final List<Change> changes = new ArrayList<>();

  /** Writes a file anew. */
  public void write(String path, byte[] bytes) {
    changes.add(new Write(path, bytes));
  }

  /** Removes a file. */
  public void remove(String path) {
    changes.add(new Remove(path));
  }

  /** Whether nothing changes. */
  public boolean isEmpty() {
    return changes.isEmpty();
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
}
