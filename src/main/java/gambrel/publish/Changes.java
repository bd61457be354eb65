package gambrel.publish;

import java.util.ArrayList;
import java.util.List;

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

  List<Change> list() {
    return List.copyOf(changes);
  }
}
