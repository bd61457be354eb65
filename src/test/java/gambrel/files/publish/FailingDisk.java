package gambrel.files.publish;

import java.io.IOException;

/**
 * A disk that does so many operations and then fails, for good: as when the power goes. A file
 * being written at that moment is left torn.
 */
public final class FailingDisk extends WatchedDisk {
  private final int limit;

  /** A disk that fails after {@code operations} operations. */
  public FailingDisk(int operations) {
    limit = operations;
  }

  /** Whether it never came to failing. */
  public boolean isWhole() {
    return operations() <= limit;
  }

  @Override
  protected void before(Kind kind, int n, Act tear) throws IOException {
    if (n == limit) {
      tear.run();
    }
    if (n >= limit) {
      throw new IOException("the disk has failed");
    }
  }
}
