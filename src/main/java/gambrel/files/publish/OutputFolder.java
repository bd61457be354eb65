package gambrel.files.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The output folder, locked by one run at a time. The operating system releases the lock when the
 * process ends.
 *
 * <p>All changes of a night are published or none. First every new file is written to a staging
 * folder and flushed, and every folder that it needs is made. Then a journal of the moves is
 * written. Until the journal exists no published file has changed. After that the next run, which
 * opens the folder, finishes what a run that died had begun; a full disk does not prevent this,
 * since only names move.
 */
public final class OutputFolder implements AutoCloseable {
  private static final String LOCK = ".lock";

  /** Another run has the output folder open. */
  public static final class BusyException extends IOException {
    private static final long serialVersionUID = 1L;
  }

  private final FileChannel lock;
  private final Path root;
  private final Path staging;
  private final Disk disk;
  private final Set<Path> filled = new LinkedHashSet<>();

  private OutputFolder(FileChannel lock, Path root, Disk disk) throws IOException {
    this.lock = lock;
    this.root = root;
    this.staging = root.resolve(Journal.STAGING);
    this.disk = disk;
    finish(() -> {});
  }

  /**
   * Opens the folder for one run, and makes it if it does not exist.
   *
   * @throws BusyException if another run has it open
   */
  public static OutputFolder open(Path folder, Disk disk) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, Access.ofOutput(folder));
    }
    var root = folder.toRealPath();
    var options = Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    var lock = FileChannel.open(root.resolve(LOCK), options, Access.ofFileIn(root));
    try {
      if (lock.tryLock() == null) {
        throw new BusyException();
      }
      return new OutputFolder(lock, root, disk);
    } catch (OverlappingFileLockException e) {
      lock.close();
      throw new BusyException();
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** Whether a run has begun to publish into a folder, and the next run has to finish it. */
  public static boolean isUnderWay(Path folder) {
    return Journal.exists(folder);
  }

  /** A new set of changes. Those not published when the folder is closed are dropped. */
  public Changes changes() throws IOException {
    return new Changes(root, Optional.of(this));
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

  /**
   * Publishes changes of this folder: all of them or, if it fails before the journal is written,
   * none. If the process dies after that, the next run publishes the rest.
   *
   * @param done run after each change that has become visible
   */
  public void publish(Changes changes, Runnable done) throws IOException {
    var journal = changes.journal();
    if (journal.steps().isEmpty()) {
      return;
    }
    for (var step : journal.steps()) {
      target(step.path());
    }
    makeFolders(staging);
    var draft = staging.resolve("journal");
    disk.write(draft, journal.bytes());
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
  private void finish(Runnable done) throws IOException {
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
   * Removes what is staged and not published, and releases the lock. If the disk fails, the next
   * run removes the rest. If there is a journal, all is left for the next run to publish.
   */
  @Override
  public void close() throws IOException {
    try (lock) {
      undo();
    }
  }

  private void undo() {
    try {
      if (!Journal.exists(root)) {
        clearStaging();
      }
    } catch (IOException e) {
      return;
    }
  }
}
