package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.Changes;
import gambrel.files.publish.HastyDisk;
import gambrel.files.publish.OutputFolder;
import gambrel.trade.register.Digest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageCacheTest {
  private static final byte[] PAGE = "page".getBytes(StandardCharsets.UTF_8);

  @TempDir Path out;

  /** An action during a night. */
  private interface Night {
    void work(PageCache shelf, Changes changes) throws IOException;
  }

  private void night(Night night) throws IOException {
    try (var open = OutputFolder.open(out, new HastyDisk())) {
      var changes = open.changes();
      var shelf = PageCache.of(changes);
      night.work(shelf, changes);
      shelf.writeList();
      open.publish(changes, () -> {});
    }
  }

  /** The published page of a recipe; empty if it is made again. */
  private Optional<byte[]> found(String recipe) throws IOException {
    var made = new byte[0];
    var shelf = PageCache.of(Changes.unwritten(out));
    return Optional.of(shelf.page(recipe, () -> made)).filter(page -> page != made);
  }

  /** Publishes a page as a night does. */
  private void night(String recipe, String file) throws IOException {
    night((shelf, changes) -> shelf.write(file, shelf.page(recipe, () -> PAGE)));
  }

  /** Publishes a page as an issued statement. */
  private void issued() throws IOException {
    night((shelf, changes) -> shelf.write("morning.pdf", PAGE, Digest.of(PAGE)));
  }

  private String list() throws IOException {
    return Files.readString(out.resolve(PageCache.FILE));
  }

  @Test
  void findsAPageByWhatItWasMadeOf() throws IOException {
    night("ab", "morning.pdf");

    assertArrayEquals(PAGE, found("ab").orElseThrow());
    assertTrue(found("cd").isEmpty());
  }

  @Test
  void doesNotFindOneThatSomebodyChangedOrRemoved() throws IOException {
    night("ab", "morning.pdf");

    Files.writeString(out.resolve("morning.pdf"), "scribbled");
    assertTrue(found("ab").isEmpty());
    Files.delete(out.resolve("morning.pdf"));
    assertTrue(found("ab").isEmpty());
  }

  @Test
  void namesAPageMadeAnewInsteadOfTheOneBefore() throws IOException {
    night("ab", "morning.pdf");
    night("cd", "morning.pdf");

    assertTrue(found("ab").isEmpty());
    assertTrue(found("cd").isPresent());
  }

  @Test
  void forgetsWhatIsRemoved() throws IOException {
    night("ab", "morning.pdf");

    night((shelf, changes) -> changes.remove("morning.pdf"));

    assertEquals("", list());
  }

  @Test
  void isEmptyWhereItsListIsLostOrNoList() throws IOException {
    night("ab", "morning.pdf");

    Files.writeString(out.resolve(PageCache.FILE), "\u0000 no list\nab ../ /etc");

    assertTrue(found("ab").isEmpty());
    night((shelf, changes) -> {});
    assertEquals("", list());
  }

  private void assertWhole(boolean whole, String document) throws IOException {
    var cache = PageCache.of(Changes.unwritten(out));
    byte[] bytes = document.getBytes(StandardCharsets.UTF_8);
    assertEquals(whole, cache.isWhole("morning.pdf", bytes, Digest.of(PAGE)));
  }

  @Test
  void knowsADocumentByItsChecksum() throws IOException {
    issued();

    assertWhole(true, "page");
    assertWhole(false, "pagf");
    assertWhole(false, "");
  }

  @Test
  void knowsADocumentThatTheListLacksByItsDigestAndListsIt() throws IOException {
    night((shelf, changes) -> shelf.isWhole("morning.pdf", PAGE, Digest.of(PAGE)));

    assertEquals("0 " + Digest.of(PAGE) + " morning.pdf 140ab620\n", list());
    assertWhole(true, "page");
    assertWhole(false, "pagf");
    night((shelf, changes) -> shelf.isWhole("other.pdf", PAGE, Digest.of(new byte[1])));
    assertEquals(1, list().lines().count());
  }

  @Test
  void trustsNoChecksumOfAnotherDigest() throws IOException {
    issued();
    Files.writeString(out.resolve(PageCache.FILE), list().replace(Digest.of(PAGE), "0".repeat(64)));

    assertWhole(true, "page");
  }
}
