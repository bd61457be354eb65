package gambrel.files.publish;

import java.io.IOException;

/**
 * A disk on which nothing new fits after so many operations, while names can still be moved and
 * deleted. A file being written at that moment is left torn.
 */
public final class FullDisk extends WatchedDisk {
  private final int limit;
  private boolean hit;

  /** A disk that is full after {@code operations} operations. */
  public FullDisk(int operations) {
    limit = operations;
  }

  /** Whether something did not fit. */
  public boolean isHit() {
    return hit;
  }

  @Override
  protected void before(Kind kind, int n, Act tear) throws IOException {
    if (n >= limit && kind.takesRoom()) {
      hit = true;
      tear.run();
      throw new IOException("No space left on device");
    }
  }
}
