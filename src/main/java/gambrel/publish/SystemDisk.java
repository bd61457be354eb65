package gambrel.publish;

import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/** The file system that the program runs on. */
final class SystemDisk implements Disk {
  @Override
  public void makeFolder(Path folder) throws IOException {
    Files.createDirectory(folder, Access.ofFolderIn(folder.getParent()));
  }

  @Override
  public void write(Path file, Content content) throws IOException {
    try (var channel =
        FileChannel.open(
            file,
            Set.of(
                StandardOpenOption.CREATE,
                StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE),
            Access.ofFileIn(file.getParent()))) {
      content.writeTo(Channels.newOutputStream(channel));
      channel.force(true);
    }
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    Files.move(
        from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void delete(Path path) throws IOException {
    Files.delete(path);
  }

  @Override
  public void flush(Path folder) {
    try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows cannot open folders; its file system journals renames itself.
      return;
    }
  }
}
