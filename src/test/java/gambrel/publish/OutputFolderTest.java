package gambrel.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.run.Trees;
import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  private static final SortedMap<String, String> OLD =
      new TreeMap<>(
          Map.of("held/ann/B1.pdf", "draft", "data/rows.csv", "old rows", "morning.pdf", "same"));
  private static final SortedMap<String, String> NEW =
      new TreeMap<>(
          Map.of(
              "statements/ann/B1-r1.pdf",
              "statement",
              "data/rows.csv",
              "new rows",
              "data/statements.csv",
              "register",
              "morning.pdf",
              "same"));

  @TempDir private Path folder;

  private static byte[] bytes(String text) {
    return text.getBytes(UTF_8);
  }

  private Changes oldNight() {
    var changes = new Changes(folder);
    OLD.forEach((path, text) -> changes.write(path, Content.of(bytes(text))));
    return changes;
  }

  private Changes newNight() throws IOException {
    var changes = new Changes(folder);
    changes.write("statements/ann/B1-r1.pdf", bytes("statement"));
    changes.remove("held/ann/B1.pdf");
    changes.write("data/rows.csv", bytes("new rows"));
    changes.write("data/statements.csv", bytes("register"));
    return changes;
  }

  private static void publish(Path root, Changes changes, Disk disk) throws IOException {
    try (var out = OutputFolder.open(root, disk)) {
      out.publish(changes);
    }
  }

  @Test
  void aNightIsPublishedWithNothingLeftOver() throws IOException {
    publish(folder, oldNight(), Disk.SYSTEM);

    publish(folder, newNight(), Disk.SYSTEM);

    assertEquals(NEW, Trees.published(folder));
    assertEquals(List.of("data", "statements", "statements/ann"), Trees.folders(folder));
  }

  /** Every operation in turn is the one that fails, until a night needs fewer than that. */
  @Test
  void aDiskThatFailsAnywhereLeavesTheOldNightOrOneThatTheNextRunFinishes() throws IOException {
    var disk = new FailingDisk(0);
    int finished = 0;
    int undone = 0;
    for (int n = 0; !disk.isWhole() || n == 0; n++) {
      var root = folder.resolve("n" + n);
      publish(root, oldNight(), Disk.SYSTEM);
      disk = new FailingDisk(n);
      boolean failed = fails(root, disk);
      assertEquals(!disk.isWhole(), failed, "after " + n + " operations");
      var seen = new PublishedFiles(root);
      boolean isNew = seen.read("data/statements.csv").isPresent();

      publish(root, new Changes(folder), Disk.SYSTEM);

      assertEquals(isNew ? NEW : OLD, Trees.published(root), "after " + n + " operations");
      finished += isNew ? 1 : 0;
      undone += isNew ? 0 : 1;
    }
    assertTrue(undone >= 5 && finished >= 5, undone + " undone, " + finished + " finished");
  }

  private boolean fails(Path root, Disk disk) {
    try {
      publish(root, newNight(), disk);
      return false;
    } catch (IOException e) {
      return true;
    }
  }

  @Test
  void untilTheJournalIsThereNothingPublishedHasChanged() throws IOException {
    publish(folder, oldNight(), Disk.SYSTEM);

    for (int n = 0; !Files.exists(folder.resolve(".journal")); n++) {
      var published = new TreeMap<>(Trees.published(folder));
      published.keySet().removeIf(path -> path.startsWith("."));
      assertEquals(OLD, published, "after " + n + " operations");
      assertTrue(fails(folder, new FailingDisk(n)));
    }
  }

  @Test
  void aFullDiskIsGivenBackWhatStagingTook() throws IOException {
    publish(folder, oldNight(), Disk.SYSTEM);
    var full =
        new Disk() {
          @Override
          public void makeFolder(Path path) throws IOException {
            SYSTEM.makeFolder(path);
          }

          @Override
          public void write(Path file, Content content) throws IOException {
            if (file.endsWith("3")) {
              throw new IOException("no space left on device");
            }
            SYSTEM.write(file, content);
          }

          @Override
          public void move(Path from, Path to) throws IOException {
            SYSTEM.move(from, to);
          }

          @Override
          public void delete(Path path) throws IOException {
            SYSTEM.delete(path);
          }

          @Override
          public void flush(Path path) throws IOException {
            SYSTEM.flush(path);
          }
        };

    assertThrows(IOException.class, () -> publish(folder, newNight(), full));

    assertEquals(OLD, Trees.published(folder));
    assertEquals(List.of("data", "held", "held/ann"), Trees.folders(folder));
  }

  @Test
  void aJournalThatIsLeftBehindCountsForWhoeverOnlyReads() throws IOException {
    publish(folder, oldNight(), Disk.SYSTEM);
    for (int n = 0; !Files.exists(folder.resolve(".journal")); n++) {
      fails(folder, new FailingDisk(n));
    }

    var files = new PublishedFiles(folder);

    assertEquals("new rows", new String(files.read("data/rows.csv").orElseThrow(), UTF_8));
    assertEquals(Optional.empty(), files.read("held/ann/B1.pdf"));
    assertEquals(List.of(), files.list("held"));
    assertEquals(List.of("statements/ann/B1-r1.pdf"), files.list("statements"));
    assertTrue(files.holds("data/statements.csv", bytes("register")));
    assertTrue(Files.exists(folder.resolve(".journal")), "reading carries nothing out");
  }

  @Test
  void onlyOneAtATimeHoldsTheFolder() throws IOException {
    try (var out = OutputFolder.open(folder, Disk.SYSTEM)) {
      assertEquals(List.of(), out.files().list("data"));
      assertThrows(
          OutputBusyException.class, () -> OutputFolder.open(folder, Disk.SYSTEM).close());
    }
    publish(folder, oldNight(), Disk.SYSTEM);
    assertEquals(OLD, Trees.published(folder));
  }

  @Test
  void theFolderMayBeALinkToAnotherDisk() throws IOException {
    var disk = Files.createDirectory(folder.resolve("disk"));
    var link = Files.createSymbolicLink(folder.resolve("link"), disk);

    publish(link, oldNight(), Disk.SYSTEM);

    assertEquals(OLD, Trees.published(disk));
  }

  @Test
  void noPathLeadsOutOfTheFolder() throws IOException {
    var root = folder.resolve("out");
    for (var path : List.of("../x", "data/../../x", ".", "")) {
      var changes = new Changes(folder);
      changes.write(path, bytes("x"));
      assertThrows(IOException.class, () -> publish(root, changes, Disk.SYSTEM), path);
    }
    assertFalse(Files.exists(folder.resolve("x")));
    assertEquals(Map.of(), Trees.published(root));
  }

  @Test
  void whatDoesNotFitInMemoryWaitsOnTheDisk() throws IOException {
    try (var changes = new Changes(folder, 10)) {
      changes.write("a.pdf", bytes("ten bytes!"));
      changes.write("b.pdf", bytes("the eleventh byte"));
      changes.write("c.pdf", bytes(""));
      changes.write("d.pdf", bytes("more".repeat(50_000)));
      publish(folder, changes, Disk.SYSTEM);
    }
    assertEquals(
        Map.of(
            "a.pdf", "ten bytes!",
            "b.pdf", "the eleventh byte",
            "c.pdf", "",
            "d.pdf", "more".repeat(50_000)),
        Trees.published(folder));
  }

  /** Ten years of statements are four gigabytes. */
  @Test
  void whatWaitsOnTheDiskIsNotInMemoryToo() throws IOException {
    try (var changes = new Changes(folder, 0)) {
      var document = waiting(changes);
      for (int i = 0; i < 100 && document.get() != null; i++) {
        System.gc();
      }
      assertTrue(document.get() == null, "its bytes are still held");
      assertEquals(1, changes.count());
    }
  }

  private static WeakReference<byte[]> waiting(Changes changes) throws IOException {
    var document = bytes("more".repeat(50_000));
    changes.write("a.pdf", document);
    return new WeakReference<>(document);
  }

  @Test
  void nothingOfWhatWaitedIsLeft() throws IOException {
    try (var changes = new Changes(folder, 0)) {
      changes.write("a.pdf", bytes("a"));
    }
    try (var files = Files.list(folder)) {
      assertEquals(0, files.count());
    }
  }

  @Test
  void aFileHoldsWhatItHoldsToTheLastByte() throws IOException {
    publish(folder, oldNight(), Disk.SYSTEM);
    var files = new PublishedFiles(folder);
    String path = OLD.keySet().iterator().next();
    String text = OLD.get(path);
    assertTrue(files.holds(path, bytes(text)));
    assertFalse(files.holds(path, bytes(text + "x")));
    assertFalse(files.holds(path, bytes(text.substring(1))));
    assertFalse(files.holds(path, bytes("x" + text.substring(1))));
    assertFalse(files.holds("no such file", bytes("")));
  }
}
