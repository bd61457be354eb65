package gambrel.trade.reckoning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import gambrel.trade.account.Entitlement;
import org.junit.jupiter.api.Test;

/** How many packs of a body are wholly a customer's, and what its customers take home together. */
class BodyAccountTest extends FiguresTest {

  private BodyAccount account() {
    return night().bodies().get("B1");
  }

  /** Two packs of B1, and three of a batch of its trim. */
  private void twoPacksAndABatchOfThree() {
    scene.weigh(
        """
        05T10:00 B1 pack rump  5
        05T10:01 B1 pack rump  5
        05T10:02 B1 tub  trim  9 batch=M1
        05T11:00 -  pack mince 3 batch=M1
        05T11:01 -  pack mince 3 batch=M1
        05T11:02 -  pack mince 3 batch=M1
        """);
  }

  @Test
  void packsOfABatchOfOneBodyAreItsSoleOwners() {
    twoPacksAndABatchOfThree();
    assertEquals(3, account().packsOfOwnBatches());
    assertEquals(5, account().packs("ann"));
  }

  @Test
  void ofASharedBodyOnlyThePacksThatNameACustomerAreHis() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    twoPacksAndABatchOfThree();
    scene.weigh("05T10:03 B1 pack mince 4 customer=bob\n05T10:04 B1 pack mince 4 customer=bob");
    assertEquals(0, account().packs("ann"));
    assertEquals(2, account().packs("bob"));
  }

  @Test
  void packsOfABatchWithAnotherBodysMeatAreNobodys() {
    twoPacksAndABatchOfThree();
    scene.body("B2,beef,2026-03-02,ann").weigh("05T10:05 B2 tub trim 0.5 batch=M1");
    assertEquals(0, account().packsOfOwnBatches());
    assertEquals(2, account().packs("ann"));
  }

  @Test
  void packsOfABatchThatIsStillPackedDoNotCountYet() {
    twoPacksAndABatchOfThree();
    // Six quiet hours after the last pack.
    assertEquals(0, scene.reckon("05T17:01").bodies().get("B1").packsOfOwnBatches());
    assertEquals(3, scene.reckon("05T17:02").bodies().get("B1").packsOfOwnBatches());
  }

  @Test
  void theCustomersTakeHomeTogetherWhatTheBodyGave() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/4", "B1,shop,3/4").simpleBody();
    assertEquals(kg("200"), account().sum(Entitlement::takeHome));
  }
}
