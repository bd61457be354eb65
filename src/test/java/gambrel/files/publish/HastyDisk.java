package gambrel.files.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * The machine's disk without flushing, for tests in which processes die and the machine does not.
 */
public class HastyDisk implements Disk {
  @Override
  public void makeFolder(Path folder) throws IOException {
    SYSTEM.makeFolder(folder);
  }

  @Override
  public void write(Path file, byte[] content) throws IOException {
    Files.write(file, content);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void delete(Path path) throws IOException {
    SYSTEM.delete(path);
  }

  @Override
  public void flush(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is no folder");
    }
  }
}
