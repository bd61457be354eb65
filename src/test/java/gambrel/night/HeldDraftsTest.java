package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code held/} has exactly the drafts of statements that are held now. */
class HeldDraftsTest {
  private static final String NEXT = "2026-03-07T02:00";

  @TempDir private Path folder;
  private NightShop shop;

  /** A body with more in its packs than it weighed, which is held, and one that is issued. */
  @BeforeEach
  void holdOne() {
    shop = new NightShop(folder.resolve("shop"));
    shop.beef("B1", "ann").body("B2", "bob").packs("B2", "140");
    shop.add("releases.csv", "body,by,on,reason,action");
    assertEquals(1, shop.run(NightShop.NIGHT).exitCode());
    assertEquals(List.of("held/bob/B2.pdf"), drafts());
  }

  private List<String> drafts() {
    return Trees.published(shop.reports()).keySet().stream()
        .filter(file -> file.startsWith("held/"))
        .toList();
  }

  private boolean hasFolder(String name) {
    return Files.isDirectory(shop.reports().resolve(name));
  }

  @Test
  void aDraftGoesWithItsFolderWhenTheStatementIsReleased() {
    shop.add("releases.csv", "B2,Hetty,2026-03-06T09:00,seen,release");

    assertEquals(0, shop.run(NEXT).exitCode());

    assertEquals(List.of(), drafts());
    assertFalse(hasFolder("held"));
    assertTrue(Files.exists(shop.reports().resolve("statements/bob/B2-r1.pdf")));
  }

  @Test
  void aDraftGoesWhenTheBodyIsOpenAgain() {
    shop.weigh("bench", "06T22:00:00", "B2", "bone", "1");

    assertEquals(0, shop.run(NEXT).exitCode());

    assertEquals(List.of(), drafts());
  }

  @Test
  void aDraftGoesWhenTheBodyIsCancelled() {
    shop.replace("bodies.csv", "B2,beef,2026-03-02,bob,", "B2,beef,2026-03-02,bob,cancelled");

    shop.run(NEXT);

    assertEquals(List.of(), drafts());
  }

  @Test
  void aDraftFollowsItsOwner() {
    shop.replace("bodies.csv", "B2,beef,2026-03-02,bob", "B2,beef,2026-03-02,ann");

    shop.run(NEXT);

    assertEquals(List.of("held/ann/B2.pdf"), drafts());
    assertFalse(hasFolder("held/bob"));
  }

  @Test
  void aDraftThatIsTheSameIsNotTouched() {
    Trees.age(shop.reports().resolve("held"));
    var times = Trees.times(shop.reports().resolve("held"));

    shop.run(NEXT);

    assertEquals(times, Trees.times(shop.reports().resolve("held")));
  }

  @Test
  void whatSomebodyElsePutThereIsLeftAlone() throws Exception {
    Files.writeString(shop.reports().resolve("held/notes.txt"), "ask Bob");

    shop.run(NEXT);

    assertEquals(List.of("held/bob/B2.pdf", "held/notes.txt"), drafts());
  }

  @Test
  void theShopsOwnBodyThatFailsIsHeldWithoutAPage() {
    shop.replace("bodies.csv", "B2,beef,2026-03-02,bob", "B2,beef,2026-03-02,");

    assertEquals(1, shop.run(NEXT).exitCode());

    assertEquals(List.of(), drafts());
  }
}
