package gambrel.trade.reckoning;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import org.junit.jupiter.api.Test;

/** Who has a part of a body. */
class NightTest extends FiguresTest {

  @Test
  void theOwnerAndWhomAPackNamesHaveAPartOfABody() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 0.01 customer=bob");
    assertTrue(night().isOwner("ann", "B1"));
    assertTrue(night().isOwner("bob", "B1"));
    assertFalse(night().isOwner("cat", "B1"));
  }

  @Test
  void nobodyHasAPartOfACancelledBody() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,cancelled");
    assertFalse(night().isOwner("ann", "B1"));
  }

  @Test
  void nobodyHasAPartOfABodyThatIsNotListed() {
    assertFalse(night().isOwner("ann", "B2"));
  }
}
