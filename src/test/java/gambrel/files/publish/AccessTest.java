package gambrel.files.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import gambrel.night.Trees;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rights of published files. */
class AccessTest {
  private static final byte[] TEXT = {'x'};

  @TempDir private Path folder;

  @BeforeEach
  void needsRights() {
    assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
  }

  private static void publish(Path out) throws IOException {
    try (var open = OutputFolder.open(out, Disk.SYSTEM)) {
      var changes = open.changes();
      changes.write("statements/ann/B1-r1.pdf", TEXT);
      changes.write("data/bodies.csv", TEXT);
      changes.write("morning.pdf", TEXT);
      open.publish(changes, () -> {});
    }
  }

  private static String rights(Path out) throws IOException {
    var found = new TreeSet<String>();
    for (var folder : Trees.folders(out)) {
      found.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(out.resolve(folder))));
    }
    for (var file : Trees.published(out).keySet()) {
      found.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(out.resolve(file))));
    }
    return String.join(" ", found);
  }

  @Test
  void aNewOutputFolderIsTheOwnersAlone() throws IOException {
    var out = folder.resolve("new/out");

    publish(out);

    assertEquals("rw------- rwx------", rights(out));
    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(out)));
  }

  @ParameterizedTest
  @CsvSource({
    "rwxr-xr-x, rw------- rwx------",
    "rwx------, rw------- rwx------",
    "rwxr-x---, rw-r----- rwxr-x---",
    "rwxrwx---, rw-r----- rwxr-x---"
  })
  void onlyAFolderThatWasOpenedToItsGroupAloneHandsThatOn(String given, String made)
      throws IOException {
    var out = Files.createDirectory(folder.resolve("out"));
    Files.setPosixFilePermissions(out, PosixFilePermissions.fromString(given));

    publish(out);

    assertEquals(made, rights(out));
  }

  @ParameterizedTest
  @CsvSource({"rwxr-xr-x, rw-------", "rwx------, rw-------", "rwxr-x---, rw-r-----"})
  void theLockIsAsPrivateAsTheOtherFiles(String given, String made) throws IOException {
    var out = Files.createDirectory(folder.resolve("out"));
    Files.setPosixFilePermissions(out, PosixFilePermissions.fromString(given));

    publish(out);

    var lock = Files.getPosixFilePermissions(out.resolve(".lock"));
    assertEquals(made, PosixFilePermissions.toString(lock));
  }
}
