package gambrel.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes a set of changes all or nothing. Every new file is first written to a staging folder and
 * flushed; then a journal names the moves to make. Up to the moment the journal exists nothing
 * published has changed; from then on a run that dies is finished by the next.
 */
final class Journal {
  private static final String STAGING = ".staging";
  private static final String JOURNAL = ".journal";
  private static final String MOVE = "move ";
  private static final String REMOVE = "remove ";

  private final Path root;

  Journal(Path root) {
    this.root = root.toAbsolutePath().normalize();
  }

  void publish(Changes changes) throws IOException {
    clearStaging();
    if (changes.isEmpty()) {
      return;
    }
    var staging = Files.createDirectories(root.resolve(STAGING));
    var lines = new ArrayList<String>();
    for (var change : changes.list()) {
      if (change instanceof Changes.Write write) {
        String staged = String.valueOf(lines.size());
        flush(staging.resolve(staged), write.bytes());
        lines.add(MOVE + staged + ' ' + write.path());
      } else {
        lines.add(REMOVE + change.path());
      }
    }
    var draft = staging.resolve("journal");
    flush(draft, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    flushFolder(staging);
    Files.move(draft, root.resolve(JOURNAL), StandardCopyOption.ATOMIC_MOVE);
    flushFolder(root);
    finish();
  }

  /** Carries out a journal that is there; without one, drops what an unfinished run has staged. */
  void finish() throws IOException {
    var journal = root.resolve(JOURNAL);
    if (Files.exists(journal)) {
      for (String line : Files.readAllLines(journal, StandardCharsets.UTF_8)) {
        carryOut(line);
      }
      Files.delete(journal);
      flushFolder(root);
    }
    clearStaging();
  }

  private void carryOut(String line) throws IOException {
    if (line.startsWith(REMOVE)) {
      remove(target(line.substring(REMOVE.length())));
      return;
    }
    String[] parts = line.substring(MOVE.length()).split(" ", 2);
    var staged = root.resolve(STAGING).resolve(parts[0]);
    var target = target(parts[1]);
    if (Files.exists(staged)) {
      Files.createDirectories(target.getParent());
      Files.move(
          staged, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      flushFolder(target.getParent());
    }
  }

  private Path target(String path) throws IOException {
    var target = root.resolve(path).normalize();
    if (!target.startsWith(root) || target.equals(root)) {
      throw new IOException("a path outside the output folder: " + path);
    }
    return target;
  }

  /** Removes a file and the folder that it leaves empty. */
  private void remove(Path file) throws IOException {
    Files.deleteIfExists(file);
    var folder = file.getParent();
    if (!folder.equals(root) && Files.isDirectory(folder)) {
      try (var rest = Files.list(folder)) {
        if (rest.findAny().isPresent()) {
          return;
        }
      }
      Files.delete(folder);
    }
  }

  private void clearStaging() throws IOException {
    var staging = root.resolve(STAGING);
    if (!Files.exists(staging)) {
      return;
    }
    List<Path> files;
    try (var walk = Files.walk(staging)) {
      files = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (var file : files) {
      Files.delete(file);
    }
  }

  private static void flush(Path file, byte[] bytes) throws IOException {
    try (var channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      var buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  /** Flushes a folder's entries where the system lets a folder be opened; others order them. */
  private static void flushFolder(Path folder) {
    try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows cannot open folders; its file system journals renames itself.
      return;
    }
  }
}
