package gambrel.files.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** A disk with a watcher that is called before every operation and may prevent it. */
public abstract class WatchedDisk extends HastyDisk {
  private int operations;

  /** A kind of operation. */
  public enum Kind {
    /** A new folder. */
    MAKE_FOLDER,
    /** A file written. */
    WRITE,
    /** A file moved. */
    MOVE,
    /** A file or folder deleted. */
    DELETE,
    /** The names in a folder flushed. */
    FLUSH;

    /** Whether it needs free space. */
    public boolean takesRoom() {
      return this == MAKE_FOLDER || this == WRITE;
    }
  }

  /** An operation on a disk. */
  public interface Act {
    /** Runs the operation. */
    void run() throws IOException;
  }

  /**
   * Called before an operation.
   *
   * @param n how many were run or tried before it
   * @param tear does half of the operation if possible: leaves a file half written
   * @throws IOException instead of the operation
   */
  protected abstract void before(Kind kind, int n, Act tear) throws IOException;

  /** How many operations were run or tried. */
  public int operations() {
    return operations;
  }

  private void act(Kind kind, Act act) throws IOException {
    act(kind, () -> {}, act);
  }

  private void act(Kind kind, Act tear, Act act) throws IOException {
    before(kind, operations++, tear);
    act.run();
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    act(Kind.MAKE_FOLDER, () -> super.makeFolder(folder));
  }

  @Override
  public void write(Path file, byte[] content) throws IOException {
    act(
        Kind.WRITE,
        () -> super.write(file, Arrays.copyOf(content, content.length / 2)),
        () -> super.write(file, content));
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    act(Kind.MOVE, () -> super.move(from, to));
  }

  @Override
  public void delete(Path path) throws IOException {
    act(Kind.DELETE, () -> super.delete(path));
  }

  @Override
  public void flush(Path folder) throws IOException {
    act(Kind.FLUSH, () -> super.flush(folder));
  }
}
