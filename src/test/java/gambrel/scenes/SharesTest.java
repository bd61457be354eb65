package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who gets what of a body. */
class SharesTest extends SceneTest {

  private Scene shares(String... rows) {
    return scene.file("shares.csv", "body,customer,share").add("shares.csv", rows);
  }

  /** B1 with one item of a given weight; nothing else is looked at. */
  private Found packed(String net) {
    scene.set("bins=no");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    %s
        """
            .formatted(net));
    return scene.at(LATER);
  }

  private static void assertItem(Found found, String item, String... parts) {
    for (String part : parts) {
      var words = part.split(" ");
      assertEquals(words[1], found.figure(words[0], "B1", "item:" + item), words[0]);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/2", "0.5", "50%", "1 of 2", "2/4"})
  void aHalfMayBeWrittenInManyWays(String half) {
    shares("B1,ann," + half, "B1,bob," + half);
    assertItem(packed("10"), "rump", "ann 5.000", "bob 5.000");
  }

  @Test
  void theOddGramOfTwoHalvesGoesToTheIdThatSortsFirst() {
    shares("B1,bob,1/2", "B1,ann,1/2");
    assertItem(packed("10.001"), "rump", "ann 5.001", "bob 5.000");
  }

  @Test
  void threeThirdsAreExact() {
    shares("B1,ann,1/3", "B1,bob,1/3", "B1,cat,1/3");
    var found = packed("10.001");
    assertEquals("issued", found.state("B1"));
    assertItem(found, "rump", "ann 3.334", "bob 3.334", "cat 3.333");
  }

  @Test
  void threeTimesThirtyThreePointThreePerCentHolds() {
    shares("B1,ann,33.3%", "B1,bob,33.3%", "B1,cat,33.3%");
    var found = packed("10");
    assertEquals("held shares", found.state("B1"));
    assertEquals("hold", found.notice("shares-sum", "severity"));
  }

  @Test
  void sharesCannotBeReleased() {
    shares("B1,ann,1/2").release("B1", "release", "10");
    assertEquals("held shares", packed("10").state("B1"));
  }

  @Test
  void aDateWhereAShareBelongsIsRefusedWithTheCure() {
    shares("B1,ann,1-Feb", "B1,bob,1/2");
    var found = packed("10");
    assertEquals("held row-unread;shares", found.state("B1"));
    assertTrue(found.notice("spreadsheet-damage", "advice").contains("as text"));
  }

  @Test
  void theLargestRemaindersGetWhatIsLeft() {
    shares("B1,ann,1/2", "B1,bob,1/3", "B1,cat,1/6");
    // 2.5, 1.667 and 0.833 grams of five: two are left for the remainders 0.833 and 0.667
    assertItem(packed("0.005"), "rump", "ann 0.002", "bob 0.002", "cat 0.001");
  }

  @Test
  void theTotalIsRoundedOnceBeforeItIsDivided() {
    shares("B1,ann,1/2", "B1,bob,1/2");
    scene.weigh("05T10:01 B1 pack rump 0.0004");
    // 10.0008 is 10.001
    assertItem(packed("10.0004"), "rump", "ann 5.001", "bob 5.000");
  }

  @Test
  void eachItemIsDividedOnItsOwn() {
    shares("B1,ann,1/2", "B1,bob,1/2");
    scene.weigh("05T10:01 B1 pack topside 3.001");
    var found = packed("5.001");
    // Ann gets the odd gram twice.
    assertEquals("4.002", found.statement("ann", "B1", "take_home_kg"));
    assertEquals("4.000", found.statement("bob", "B1", "take_home_kg"));
  }

  @Test
  void theMeatOfABatchIsDividedOnItsOwn() {
    shares("B1,ann,1/2", "B1,bob,1/2");
    scene.weigh(
        """
        05T10:00 B1 tub  trim  3.001 batch=M1
        05T12:00 -  pack mince 3.001 batch=M1
        """);
    var found = packed("5.001");
    assertEquals("1.501", found.figure("ann", "B1", "batch:M1"));
    assertEquals("1.500", found.figure("bob", "B1", "batch:M1"));
    assertEquals("4.002", found.statement("ann", "B1", "take_home_kg"));
  }

  @Test
  void aPackThatNamesACustomerIsTheirsOutrightAndTheRestIsShared() {
    shares("B1,ann,1/2", "B1,bob,1/2");
    scene.weigh("05T10:01 B1 pack rump 2 customer=bob");
    assertItem(packed("10"), "rump", "ann 5.000", "bob 7.000");
  }

  @Test
  void somebodyWithOutrightPacksOnlyGetsAStatementWithoutCharges() {
    scene.file("charges.csv", "charge,description,basis,price", "kill,Kill,head,50");
    scene.weigh("05T10:01 B1 pack rump 2 customer=cat");
    var found = packed("10");
    assertEquals("2.000", found.statement("cat", "B1", "take_home_kg"));
    assertEquals("0.00", found.statement("cat", "B1", "charges"));
    assertEquals("50.00", found.statement("ann", "B1", "charges"));
    // Nor is the rest of the animal theirs to see.
    assertEquals("none", found.figure("cat", "B1", "body:hot"));
  }

  @Test
  void nobodyWithAShareOfAnItemIsShownAPackCountThatIsNotTheirOwn() {
    assertEquals("1", packed("10").figure("ann", "B1", "packs:rump"));
    shares("B1,ann,1/2", "B1,bob,1/2");
    assertEquals("none", scene.at(LATER).figure("ann", "B1", "packs:rump"));
  }

  @Test
  void theShopMayOwnAShareAndGetsNoStatement() {
    shares("B1,ann,3/4", "B1,shop,1/4");
    var found = packed("10");
    assertItem(found, "rump", "ann 7.500");
    assertEquals(1, found.rows("statements").size());
  }

  @Test
  void withoutSharesTheCustomerTakesAll() {
    assertItem(packed("10"), "rump", "ann 10.000");
  }

  @Test
  void withoutSharesAndCustomerItIsTheShopsOwnAndClosed() {
    scene.file("bodies.csv", "body,species,killed", "B1,beef,2026-03-02");
    var found = packed("10");
    assertEquals("closed", found.state("B1"));
    assertEquals(List.of(), found.rows("statements"));
    assertEquals(0, found.exit());
  }
}
