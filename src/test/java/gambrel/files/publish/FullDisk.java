package gambrel.files.publish;

import java.io.IOException;

/**
 * A disk that is full after so many operations; files can still be moved and deleted. The file that
 * is being written then is left half written.
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
