package gambrel.publish;

import java.io.IOException;
import java.nio.file.Path;

/** What publishing changes on a file system; a test can let any of it fail. */
public interface Disk {
  /** The system's own. */
  Disk SYSTEM = new SystemDisk();

  /** Makes a folder in a folder that exists. */
  void makeFolder(Path folder) throws IOException;

  /** Writes a file anew; its content is on the disk when this returns. */
  void write(Path file, Content content) throws IOException;

  /** Moves a file in one step, in place of whatever has the new name. */
  void move(Path from, Path to) throws IOException;

  /** Deletes a file or an empty folder that exists. */
  void delete(Path path) throws IOException;

  /** Sees to it that the names in a folder are on the disk. */
  void flush(Path folder) throws IOException;
}
