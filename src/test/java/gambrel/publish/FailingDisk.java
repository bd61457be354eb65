package gambrel.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A disk that does so many operations and then fails, for good: as when the power goes or nothing
 * fits any more. A file being written at that moment is left torn.
 */
public final class FailingDisk implements Disk {
  private int left;

  /** A disk that fails after {@code operations} operations. */
  public FailingDisk(int operations) {
    left = operations;
  }

  /** Whether it never came to failing. */
  public boolean isWhole() {
    return left >= 0;
  }

  private boolean fails() {
    left = left > 0 ? left - 1 : -1;
    return left < 0;
  }

  private void step(Step step) throws IOException {
    if (fails()) {
      throw new IOException("the disk has failed");
    }
    step.run();
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    step(() -> SYSTEM.makeFolder(folder));
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    boolean dead = left < 0;
    if (fails()) {
      if (!dead) {
        SYSTEM.write(file, Arrays.copyOf(bytes, bytes.length / 2));
      }
      throw new IOException("the disk has failed");
    }
    SYSTEM.write(file, bytes);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    step(() -> SYSTEM.move(from, to));
  }

  @Override
  public void delete(Path path) throws IOException {
    step(() -> SYSTEM.delete(path));
  }

  @Override
  public void flush(Path folder) throws IOException {
    step(() -> SYSTEM.flush(folder));
  }

  /** One operation. */
  private interface Step {
    void run() throws IOException;
  }
}
