package gambrel.files.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.Trees;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  /** What a night writes and removes. */
  private interface Night {
    void change(Changes changes) throws IOException;
  }

  private static void oldNight(Changes changes) throws IOException {
    for (var file : OLD.entrySet()) {
      changes.write(file.getKey(), bytes(file.getValue()));
    }
  }

  private static void newNight(Changes changes) throws IOException {
    changes.write("statements/ann/B1-r1.pdf", bytes("statement"));
    changes.remove("held/ann/B1.pdf");
    changes.write("data/rows.csv", bytes("new rows"));
    changes.write("data/statements.csv", bytes("register"));
  }

  private static void publish(Path root, Night night, Disk disk) throws IOException {
    try (var out = OutputFolder.open(root, disk)) {
      var changes = out.changes();
      night.change(changes);
      out.publish(changes, () -> {});
    }
  }

  @Test
  void aNightIsPublishedWithNothingLeftOver() throws IOException {
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);

    publish(folder, OutputFolderTest::newNight, Disk.SYSTEM);

    assertEquals(NEW, Trees.published(folder));
    assertEquals(List.of("data", "statements", "statements/ann"), Trees.folders(folder));
  }

  /** Each operation in turn fails, until the night has fewer operations. */
  @Test
  void aDiskThatFailsAnywhereLeavesTheOldNightOrOneThatTheNextRunFinishes() throws IOException {
    var disk = new FailingDisk(0);
    int finished = 0;
    int undone = 0;
    for (int n = 0; !disk.isWhole() || n == 0; n++) {
      var root = folder.resolve("n" + n);
      publish(root, OutputFolderTest::oldNight, Disk.SYSTEM);
      disk = new FailingDisk(n);
      boolean failed = fails(root, disk);
      assertEquals(!disk.isWhole(), failed, "after " + n + " operations");
      var seen = Changes.unwritten(root);
      boolean isNew = seen.read("data/statements.csv").isPresent();

      publish(root, changes -> {}, Disk.SYSTEM);

      assertEquals(isNew ? NEW : OLD, Trees.published(root), "after " + n + " operations");
      finished += isNew ? 1 : 0;
      undone += isNew ? 0 : 1;
    }
    assertTrue(undone >= 5 && finished >= 5, undone + " undone, " + finished + " finished");
  }

  private boolean fails(Path root, Disk disk) {
    try {
      publish(root, OutputFolderTest::newNight, disk);
      return false;
    } catch (IOException e) {
      return true;
    }
  }

  @Test
  void untilTheJournalIsThereNothingPublishedHasChanged() throws IOException {
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);

    for (int n = 0; !Files.exists(folder.resolve(".journal")); n++) {
      var published = new TreeMap<>(Trees.published(folder));
      published.keySet().removeIf(path -> path.startsWith("."));
      assertEquals(OLD, published, "after " + n + " operations");
      assertTrue(fails(folder, new FailingDisk(n)));
    }
  }

  @Test
  void aFullDiskIsGivenBackWhatStagingTook() throws IOException {
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);
    var full =
        new Disk() {
          @Override
          public void makeFolder(Path path) throws IOException {
            SYSTEM.makeFolder(path);
          }

          @Override
          public void write(Path file, byte[] content) throws IOException {
            if (file.endsWith("data/statements.csv")) {
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

    assertThrows(IOException.class, () -> publish(folder, OutputFolderTest::newNight, full));

    assertEquals(OLD, Trees.published(folder));
    assertEquals(List.of("data", "held", "held/ann"), Trees.folders(folder));
  }

  @Test
  void aJournalThatIsLeftBehindCountsForWhoeverOnlyReads() throws IOException {
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);
    for (int n = 0; !Files.exists(folder.resolve(".journal")); n++) {
      fails(folder, new FailingDisk(n));
    }

    var files = Changes.unwritten(folder);

    assertEquals("new rows", new String(files.read("data/rows.csv").orElseThrow(), UTF_8));
    assertEquals(Optional.empty(), files.read("held/ann/B1.pdf"));
    assertEquals(List.of(), files.list("held"));
    assertEquals(List.of("statements/ann/B1-r1.pdf"), files.list("statements"));
    assertEquals("register", new String(files.read("data/statements.csv").orElseThrow(), UTF_8));
    assertTrue(Files.exists(folder.resolve(".journal")), "reading carries nothing out");
  }

  @Test
  void onlyOneAtATimeHoldsTheFolder() throws IOException {
    try (var out = OutputFolder.open(folder, Disk.SYSTEM)) {
      assertEquals(List.of(), out.changes().list("data"));
      assertThrows(
          OutputFolder.BusyException.class, () -> OutputFolder.open(folder, Disk.SYSTEM).close());
    }
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);
    assertEquals(OLD, Trees.published(folder));
  }

  @Test
  void theFolderMayBeALinkToAnotherDisk() throws IOException {
    var disk = Files.createDirectory(folder.resolve("disk"));
    var link = Files.createSymbolicLink(folder.resolve("link"), disk);

    publish(link, OutputFolderTest::oldNight, Disk.SYSTEM);

    assertEquals(OLD, Trees.published(disk));
  }

  @Test
  void noPathLeadsOutOfTheFolder() throws IOException {
    var root = folder.resolve("out");
    for (var path : List.of("../x", "data/../../x", ".", "")) {
      assertThrows(
          IOException.class,
          () -> publish(root, changes -> changes.write(path, bytes("x")), Disk.SYSTEM),
          path);
      assertThrows(
          IOException.class,
          () -> publish(root, changes -> changes.remove(path), Disk.SYSTEM),
          path);
    }
    assertFalse(Files.exists(folder.resolve("x")));
    assertEquals(Map.of(), Trees.published(root));
  }

  /** A year of statements is fifty megabytes, and a night may make several years of them. */
  @Test
  void whatIsWrittenWaitsOnTheDiskAndNotInMemory() throws IOException {
    try (var out = OutputFolder.open(folder, Disk.SYSTEM)) {
      var changes = out.changes();
      var document = written(changes);
      for (int i = 0; i < 100 && document.get() != null; i++) {
        System.gc();
      }
      assertTrue(document.get() == null, "its bytes are still held");
      assertEquals(1, changes.count());
    }
  }

  private static WeakReference<byte[]> written(Changes changes) throws IOException {
    var document = bytes("more".repeat(50_000));
    changes.write("a.pdf", document);
    return new WeakReference<>(document);
  }

  @Test
  void nothingIsLeftOfANightThatIsGivenUp() throws IOException {
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);

    try (var out = OutputFolder.open(folder, Disk.SYSTEM)) {
      newNight(out.changes());
    }

    assertEquals(OLD, Trees.published(folder));
    assertEquals(List.of("data", "held", "held/ann"), Trees.folders(folder));
  }

  @Test
  void aFileThatStandsThereAlreadyIsNoChange() throws IOException {
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);

    try (var out = OutputFolder.open(folder, Disk.SYSTEM)) {
      var changes = out.changes();
      oldNight(changes);
      assertEquals(0, changes.count());
    }
  }

  @Test
  void changesThatAreNotWrittenAreCounted() throws IOException {
    var changes = Changes.unwritten(folder);

    newNight(changes);

    assertEquals(4, changes.count());
    assertEquals(Map.of(), Trees.published(folder));
  }

  @ParameterizedTest
  @ValueSource(strings = {"samex", "sam", "ame", "xame", ""})
  void aFileThatDiffersInAByteIsAChange(String text) throws IOException {
    publish(folder, OutputFolderTest::oldNight, Disk.SYSTEM);

    publish(folder, changes -> changes.write("morning.pdf", bytes(text)), Disk.SYSTEM);

    assertEquals(text, Files.readString(folder.resolve("morning.pdf")));
  }

  /** The process dies before each operation in turn; the next night is of other files. */
  @Test
  void aNightThatDiedWhileItWasStagedLeavesNoFolder() throws IOException {
    var disk = new FailingDisk(0);
    for (int n = 0; !disk.isWhole() || n == 0; n++) {
      var root = folder.resolve("n" + n);
      publish(root, OutputFolderTest::oldNight, Disk.SYSTEM);
      disk = new FailingDisk(n);
      var dying = OutputFolder.open(root, disk);
      try {
        dying.changes().write("held/bob/B2.pdf", bytes("draft"));
      } catch (IOException e) {
        assertFalse(disk.isWhole());
      } finally {
        dying.close();
      }

      publish(root, changes -> {}, Disk.SYSTEM);

      assertEquals(List.of("data", "held", "held/ann"), Trees.folders(root), "operation " + n);
    }
  }

  @Test
  void aFolderThatIsALinkIsKeptThoughItIsEmpty() throws IOException {
    var disk = Files.createDirectory(folder.resolve("disk"));
    var root = Files.createDirectory(folder.resolve("out"));
    var link = Files.createSymbolicLink(root.resolve("held"), disk);

    try (var out = OutputFolder.open(root, Disk.SYSTEM)) {
      out.changes().write("held/bob/B2.pdf", bytes("draft"));
    }

    assertTrue(Files.isSymbolicLink(link));
    assertEquals(List.of(), Trees.folders(disk));
  }
}
