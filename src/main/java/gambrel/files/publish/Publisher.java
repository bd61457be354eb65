package gambrel.files.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Publishes all changes of a night or none. First every new file is written to a staging folder and
 * flushed, and every folder that it needs is made. Then a journal of the moves is written. Until
 * the journal exists no published file has changed. After that the next run finishes what a run
 * that died had begun; a full disk does not prevent this, since only names move.
 */
final class Publisher {
  private final Path root;
  private final Disk disk;
  private final List<Path> madeFolders = new ArrayList<>();

  Publisher(Path root, Disk disk) {
    this.root = root;
    this.disk = disk;
  }

  /** Writes a file to the staging folder, and makes the folder of its target. */
  void stage(String staged, String path, Content content) throws IOException {
    var target = target(path);
    var staging = root.resolve(Journal.STAGING);
    makeFolders(staging);
    disk.write(staging.resolve(staged), content);
    makeFolders(target.getParent());
  }

  /**
   * Makes the steps of a journal visible; their files are staged.
   *
   * @param done run after each of them
   */
  void publish(Journal journal, Runnable done) throws IOException {
    if (journal.steps().isEmpty()) {
      return;
    }
    for (var step : journal.steps()) {
      target(step.path());
    }
    var staging = root.resolve(Journal.STAGING);
    makeFolders(staging);
    var draft = staging.resolve("journal");
    disk.write(draft, Content.of(journal.bytes()));
    disk.flush(staging);
    disk.move(draft, root.resolve(Journal.FILE));
    madeFolders.clear();
    disk.flush(root);
    finish(done);
  }

  /**
   * Carries out the journal of the output folder and removes the staging folder. Without a journal
   * it only removes the files that an unfinished run has staged.
   *
   * @param done run after each of its steps
   */
  void finish(Runnable done) throws IOException {
    var journal = root.resolve(Journal.FILE);
    if (Files.exists(journal)) {
      Set<Path> touched = new LinkedHashSet<>();
      for (var step : Journal.read(root).steps()) {
        carryOut(step, touched);
        done.run();
      }
      for (var folder : touched) {
        if (Files.isDirectory(folder)) {
          disk.flush(folder);
        }
      }
      disk.delete(journal);
      disk.flush(root);
    }
    clearStaging();
  }

  private void carryOut(Journal.Step step, Set<Path> touched) throws IOException {
    var target = target(step.path());
    if (step instanceof Journal.Move move) {
      var staged = root.resolve(Journal.STAGING).resolve(move.staged());
      if (Files.exists(staged)) {
        makeFolders(target.getParent());
        disk.move(staged, target);
      }
    } else {
      remove(target, touched);
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
      madeFolders.add(folder);
      disk.flush(folder.getParent());
    }
  }

  /** Removes a file and the folders that are empty without it. */
  private void remove(Path file, Set<Path> touched) throws IOException {
    if (Files.exists(file)) {
      disk.delete(file);
    }
    for (var folder = file.getParent(); !folder.equals(root); folder = folder.getParent()) {
      if (Files.isDirectory(folder)) {
        if (!isEmpty(folder)) {
          return;
        }
        disk.delete(folder);
        touched.add(folder.getParent());
      }
    }
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (var entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    }
  }

  private void clearStaging() throws IOException {
    var staging = root.resolve(Journal.STAGING);
    if (Files.exists(staging)) {
      List<Path> files;
      try (var walk = Files.walk(staging)) {
        files = walk.sorted(Comparator.reverseOrder()).toList();
      }
      for (var file : files) {
        disk.delete(file);
      }
    }
  }

  /**
   * Removes the staged files and the folders made for them. If the disk fails, the next run removes
   * the rest. If there is a journal, all is left for the next run to publish.
   */
  void undo() {
    if (Files.exists(root.resolve(Journal.FILE))) {
      return;
    }
    try {
      clearStaging();
      for (int i = madeFolders.size() - 1; i >= 0; i--) {
        if (Files.isDirectory(madeFolders.get(i)) && isEmpty(madeFolders.get(i))) {
          disk.delete(madeFolders.get(i));
        }
      }
    } catch (IOException e) {
      return;
    }
  }
}
