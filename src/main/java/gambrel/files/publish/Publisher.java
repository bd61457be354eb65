package gambrel.files.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Publishes all changes of a night or none. First every new file is written to a staging folder and
 * flushed, and every folder that it needs is made. Then a journal of the moves is written. Until
 * the journal exists no published file has changed. After that the next run finishes what a run
 * that died had begun; a full disk does not prevent this, since only names move.
 */
final class Publisher {
  private final Path root;
  private final Path staging;
  private final Disk disk;
  private final Set<Path> filled = new LinkedHashSet<>();

  Publisher(Path root, Disk disk) {
    this.root = root;
    this.staging = root.resolve(Journal.STAGING);
    this.disk = disk;
  }

  /** Writes a file to the staging folder, and makes the folder of its target. */
  void stage(String path, byte[] content) throws IOException {
    var target = target(path);
    var staged = staging.resolve(path);
    // In this order: what is staged tells which folders were made, if the run is given up.
    makeFolders(staged.getParent());
    makeFolders(target.getParent());
    disk.write(staged, content);
    filled.add(staged.getParent());
  }

  /** The content of a staged file; empty if there is none. */
  Optional<byte[]> staged(String path) throws IOException {
    return PublishedFiles.bytes(staging.resolve(path));
  }

  /**
   * Makes the steps of a journal visible; their files are staged.
   *
   * @param done run after each of them
   */
  void publish(Journal changes, Runnable done) throws IOException {
    if (changes.steps().isEmpty()) {
      return;
    }
    for (var step : changes.steps()) {
      target(step.path());
    }
    makeFolders(staging);
    var draft = staging.resolve("journal");
    disk.write(draft, changes.bytes());
    filled.add(staging);
    flush(filled);
    disk.move(draft, root.resolve(Journal.FILE));
    disk.flush(root);
    finish(done);
  }

  /**
   * Carries out the journal of the output folder and removes the staging folder. Without a journal
   * it only removes what an unfinished run has staged.
   *
   * @param done run after each of its steps
   */
  void finish(Runnable done) throws IOException {
    if (Journal.exists(root)) {
      Set<Path> touched = new LinkedHashSet<>();
      for (var step : Journal.read(root).steps()) {
        carryOut(step, touched);
        done.run();
      }
      flush(touched);
      disk.delete(root.resolve(Journal.FILE));
      disk.flush(root);
    }
    clearStaging();
  }

  private void carryOut(Journal.Step step, Set<Path> touched) throws IOException {
    var target = target(step.path());
    var staged = staging.resolve(step.path());
    if (step.act() == Journal.Act.REMOVE) {
      remove(target, touched);
    } else if (Files.exists(staged)) {
      makeFolders(target.getParent());
      disk.move(staged, target);
    }
    touched.add(target.getParent());
  }

  private Path target(String path) throws IOException {
    var target = root.resolve(path).normalize();
    if (!target.startsWith(root) || target.equals(root)) {
      throw new IOException("a path outside the output folder: " + path);
    }
    return target;
  }

  private void makeFolders(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      makeFolders(folder.getParent());
      disk.makeFolder(folder);
      disk.flush(folder.getParent());
    }
  }

  private void flush(Set<Path> folders) throws IOException {
    for (var folder : folders) {
      if (Files.isDirectory(folder)) {
        disk.flush(folder);
      }
    }
  }

  /** Removes a file and the folders that are empty without it. */
  private void remove(Path file, Set<Path> touched) throws IOException {
    if (Files.exists(file)) {
      disk.delete(file);
    }
    for (var folder = file.getParent(); !folder.equals(root); folder = folder.getParent()) {
      if (isEmptyFolder(folder)) {
        disk.delete(folder);
        touched.add(folder.getParent());
      }
    }
  }

  private static boolean isEmptyFolder(Path path) throws IOException {
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (var entries = Files.list(path)) {
      return entries.findAny().isEmpty();
    }
  }

  /** Removes what is staged, and the folders that were made for it and are empty. */
  private void clearStaging() throws IOException {
    if (Files.exists(staging)) {
      List<Path> inside;
      try (var walk = Files.walk(staging)) {
        inside = walk.sorted(Comparator.reverseOrder()).toList();
      }
      for (var staged : inside) {
        var target = root.resolve(staging.relativize(staged));
        if (Files.isDirectory(staged) && isEmptyFolder(target)) {
          disk.delete(target);
        }
        disk.delete(staged);
      }
    }
  }

  /**
   * Removes the staged files and the folders made for them. If the disk fails, the next run removes
   * the rest. If there is a journal, all is left for the next run to publish.
   */
  void undo() {
    try {
      if (!Journal.exists(root)) {
        clearStaging();
      }
    } catch (IOException e) {
      return;
    }
  }
}
