package gambrel.files.publish;

import java.io.IOException;

/**
 * A disk that fails for ever after so many operations, as in a power cut. The file that is being
 * written then is left half written.
 */
public final class FailingDisk extends WatchedDisk {
  private final int limit;

  /** A disk that fails after {@code operations} operations. */
  public FailingDisk(int operations) {
    limit = operations;
  }

  /** Whether it has not failed. */
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
