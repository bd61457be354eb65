package gambrel.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.publish.Changes;
import gambrel.publish.PublishedFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The shelf of published pages")
class PageShelfTest {
  private static final byte[] PAGE = "page".getBytes(StandardCharsets.UTF_8);

  @TempDir Path out;

  private PageShelf shelf() throws IOException {
    return PageShelf.of(new PublishedFiles(out));
  }

  /** Publishes a page as a night does. */
  private void night(String recipe, String file) throws IOException {
    var shelf = shelf();
    shelf.keep(recipe, PAGE);
    shelf.place(file, PAGE);
    Files.write(out.resolve(file), PAGE);
    Files.write(out.resolve(PageShelf.FILE), shelf.after(new Changes(out)));
  }

  @Test
  void findsAPageByWhatItWasMadeOf() throws IOException {
    night("ab", "morning.pdf");

    assertArrayEquals(PAGE, shelf().find("ab").orElseThrow());
    assertTrue(shelf().find("cd").isEmpty());
  }

  @Test
  void doesNotFindOneThatSomebodyChangedOrRemoved() throws IOException {
    night("ab", "morning.pdf");

    Files.writeString(out.resolve("morning.pdf"), "scribbled");
    assertTrue(shelf().find("ab").isEmpty());
    Files.delete(out.resolve("morning.pdf"));
    assertTrue(shelf().find("ab").isEmpty());
  }

  @Test
  void namesAPageMadeAnewInsteadOfTheOneBefore() throws IOException {
    night("ab", "morning.pdf");
    night("cd", "morning.pdf");

    assertTrue(shelf().find("ab").isEmpty());
    assertTrue(shelf().find("cd").isPresent());
  }

  @Test
  void forgetsWhatIsRemoved() throws IOException {
    night("ab", "morning.pdf");
    var changes = new Changes(out);
    changes.remove("morning.pdf");

    assertEquals(0, shelf().after(changes).length);
  }

  @Test
  void isEmptyWhereItsListIsLostOrNoList() throws IOException {
    night("ab", "morning.pdf");

    Files.writeString(out.resolve(PageShelf.FILE), "\u0000 no list\nab ../ /etc");

    assertTrue(shelf().find("ab").isEmpty());
    assertEquals(0, shelf().after(new Changes(out)).length);
  }
}
