package gambrel.files.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/** The operations with which publishing changes a file system; in a test any of them may fail. */
public interface Disk {
  /** The file system of the machine. */
  Disk SYSTEM = new Disk() {};

  /** Makes a folder whose parent exists. */
  default void makeFolder(Path folder) throws IOException {
    Files.createDirectory(folder, Access.ofFolderIn(folder.getParent()));
  }

  /** Writes a file, and replaces its content; the content is on the disk when this returns. */
  default void write(Path file, byte[] content) throws IOException {
    try (var channel =
        FileChannel.open(
            file,
            Set.of(
                StandardOpenOption.CREATE,
                StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE),
            Access.ofFileIn(file.getParent()))) {
      for (var rest = ByteBuffer.wrap(content); rest.hasRemaining(); ) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  /** Moves a file in one step, and replaces a file with the new name. */
  default void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Deletes a file or an empty folder that exists. */
  default void delete(Path path) throws IOException {
    Files.delete(path);
  }

  /** Writes the names in a folder to the disk. */
  default void flush(Path folder) throws IOException {
    try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows cannot open folders; its file system keeps a journal of renames itself.
      return;
    }
  }
}
