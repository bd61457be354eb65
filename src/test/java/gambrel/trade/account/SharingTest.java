package gambrel.trade.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** What each customer gets of a body. */
class SharingTest extends FiguresTest {

  private SortedMap<String, Entitlement> shared() {
    return Sharing.of(balance());
  }

  private Entitlement of(String customer) {
    return shared().get(customer);
  }

  private Entitlement.Line line(String customer, String item) {
    return of(customer).lines().stream()
        .filter(line -> line.item().equals(item))
        .findFirst()
        .orElseThrow();
  }

  private void thirds() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/3", "B1,bob,1/3", "B1,cat,1/3");
  }

  @Test
  void theSoleOwnerGetsEveryPackAndTheirNumber() {
    scene.weigh(
        """
        05T10:00 B1 pack rump  10
        05T10:01 B1 pack rump  11
        05T10:02 B1 pack liver  6
        """);
    assertEquals(Set.of("ann"), shared().keySet());
    assertTrue(of("ann").isSoleOwner());
    assertFalse(of("ann").isOutrightOnly());
    assertEquals(kg("21"), line("ann", "rump").weight());
    assertEquals(Optional.of(2), line("ann", "rump").packs());
    assertEquals(kg("21"), of("ann").takeHome());
    assertEquals(kg("6"), of("ann").offal());
  }

  @Test
  void everyItemIsDividedToTheGramByLargestRemainder() {
    thirds();
    scene.weigh("05T10:00 B1 pack rump 1.000");
    assertEquals(kg("0.334"), of("ann").takeHome());
    assertEquals(kg("0.333"), of("bob").takeHome());
    assertEquals(kg("0.333"), of("cat").takeHome());
    assertEquals(Optional.empty(), line("ann", "rump").packs());
    assertEquals(BigFraction.of(1, 3), of("ann").share());
    assertFalse(of("ann").isSoleOwner());
  }

  @Test
  void aPackWithACustomerIsTheirsOutright() {
    thirds();
    scene.weigh(
        """
        05T10:00 B1 pack rump 3
        05T10:01 B1 pack rump 2 customer=ann
        """);
    assertEquals(kg("3"), line("ann", "rump").weight());
    assertEquals(kg("2"), line("ann", "rump").outright());
    assertEquals(kg("1"), line("ann", "rump").shared());
    assertEquals(kg("1"), of("bob").takeHome());
    assertEquals(kg("2"), of("ann").outright());
  }

  @Test
  void aCustomerWithOutrightPacksOnlyHasNoShare() {
    scene.weigh(
        """
        05T10:00 B1 pack rump 3
        05T10:01 B1 pack rump 2 customer=bob
        """);
    assertTrue(of("bob").isOutrightOnly());
    assertEquals(Optional.of(1), line("bob", "rump").packs());
    assertEquals(kg("2"), of("bob").takeHome());
    assertEquals(Optional.of(1), line("ann", "rump").packs());
    assertEquals(kg("3"), of("ann").takeHome());
  }

  @Test
  void anItemThatIsAllOutrightIsInNoOtherLines() {
    scene.weigh(
        """
        05T10:00 B1 pack mince 3
        05T10:01 B1 pack rump  2 customer=bob
        """);
    assertEquals(List.of("mince"), of("ann").lines().stream().map(l -> l.item()).toList());
  }

  @Test
  void meatAndOtherGoodsMakeTheTakeHomeWeight() {
    scene.weigh(
        """
        05T10:00 B1 pack rump      10
        05T10:01 B1 pack trim       4
        05T10:02 B1 pack dog-bones  3
        05T10:03 B1 pack liver      6
        """);
    assertEquals(kg("17"), of("ann").takeHome());
    assertEquals(kg("14"), of("ann").takeHome().minus(of("ann").boneAndFat()));
    assertEquals(kg("3"), of("ann").boneAndFat());
  }

  @Test
  void theBodysPartOfAFinishedBatchIsDividedByShares() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,3/4", "B1,bob,1/4");
    scene.weigh(
        """
        05T10:00 B1 tub  trim  20 batch=M1
        05T12:00 -  pack mince 20 batch=M1
        """);
    assertEquals(
        List.of(new Entitlement.BatchPart("M1", kg("15"), kg("0"))), of("ann").batchParts());
    assertEquals(kg("5"), of("bob").takeHome());
    assertEquals(kg("5"), of("bob").takeHome().minus(of("bob").boneAndFat()));
  }

  @Test
  void anOpenBatchGivesNoPart() {
    scene.weigh("05T10:00 B1 pack rump 3\n05T10:01 B1 tub trim 20 batch=M1");
    assertEquals(List.of(), of("ann").batchParts());
  }

  @Test
  void aWholeBodyIsDividedAsItsCarcase() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,whole");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T11:00 B1 pack liver     6
        03T10:00 B1 cold carcase 294
        """);
    assertEquals(kg("294"), line("ann", "carcase").weight());
    assertEquals(Optional.empty(), line("ann", "carcase").packs());
    assertEquals(kg("294"), of("ann").takeHome());
    assertEquals(kg("6"), of("ann").offal());
  }

  private void whole(String outcome) {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann," + outcome);
  }

  private List<String> items(String customer) {
    return of(customer).lines().stream().map(Entitlement.Line::item).toList();
  }

  @Test
  void aCutBodyHasNoLineForItsCarcase() {
    scene.simpleBody();
    assertEquals(List.of("rump", "mince"), items("ann"));
    assertEquals(kg("200"), of("ann").takeHome());
  }

  @Test
  void ofAWholeBodyOnlyOffalIsPackedBesidesItsCarcase() {
    whole("whole");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T11:00 B1 pack liver     6
        02T11:01 B1 pack rump      5
        02T11:02 B1 tub  trim      4 batch=M1
        02T12:00 -  pack mince     4 batch=M1
        03T10:00 B1 cold carcase 294
        """);
    assertEquals(List.of("carcase", "liver"), items("ann"));
    assertEquals(List.of(), of("ann").batchParts());
    assertEquals(kg("294"), of("ann").takeHome());
  }

  @Test
  void aWholeBodyThatWasNotWeighedHasNoLines() {
    whole("whole");
    assertEquals(List.of(), items("ann"));
  }

  @Test
  void nothingOfACondemnedBodyGoesHome() {
    whole("condemned");
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 294");
    assertEquals(List.of(), items("ann"));
    assertEquals(kg("0"), of("ann").takeHome());
  }

  @Test
  void aCustomerWithoutAShareHasNoLinesOfWhatIsDivided() {
    scene.weigh("05T10:00 B1 pack rump 3\n05T10:01 B1 pack mince 2 customer=bob");
    assertEquals(List.of("mince"), items("bob"));
    assertEquals(List.of("rump"), items("ann"));
  }

  @Test
  void packsOfOneOwnerAreCountedWhereNothingOfTheItemIsDivided() {
    thirds();
    scene.weigh("05T10:00 B1 pack rump 2 customer=ann\n05T10:01 B1 pack mince 3");
    assertEquals(Optional.of(1), line("ann", "rump").packs());
    assertEquals(Optional.empty(), line("ann", "mince").packs());
  }

  @Test
  void packsOfAnOwnerAreNotCountedWhereTheItemIsDividedToo() {
    thirds();
    scene.weigh("05T10:00 B1 pack rump 2 customer=ann\n05T10:01 B1 pack rump 3");
    assertEquals(Optional.empty(), line("ann", "rump").packs());
    assertEquals(kg("3"), line("ann", "rump").weight());
  }

  @Test
  void theSoleOwnersOutrightPacksAreCountedWithTheRest() {
    scene.weigh("05T10:00 B1 pack rump 2 customer=ann\n05T10:01 B1 pack rump 3");
    assertEquals(Optional.of(2), line("ann", "rump").packs());
  }

  @Test
  void offalIsNeitherTakeHomeNorMeatNorOutrightMeat() {
    scene.weigh("05T10:00 B1 pack liver 6 customer=ann\n05T10:01 B1 pack rump 2 customer=ann");
    assertEquals(kg("6"), of("ann").offal());
    assertEquals(kg("2"), of("ann").takeHome());
    assertEquals(kg("2"), of("ann").takeHome().minus(of("ann").boneAndFat()));
    assertEquals(kg("0"), of("ann").boneAndFat());
    assertEquals(kg("2"), of("ann").outright());
  }

  @Test
  void aPackOfABatchIsNobodysOwnWhateverBodyItNames() {
    scene.weigh("05T10:00 B1 pack rump 3\n05T10:01 B1 pack mince 2 batch=M1");
    assertEquals(List.of("rump"), items("ann"));
  }

  @Test
  void eachItemIsDividedOnItsOwn() {
    // 1 g of each: the first owner takes both
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    scene.weigh("05T10:00 B1 pack rump 0.001\n05T10:01 B1 pack mince 0.001");
    assertEquals(kg("0.002"), of("ann").takeHome());
    assertEquals(kg("0"), of("bob").takeHome());
  }

  @Test
  void aWholeBodyIsNobodysUntilItsQuietHoursHavePassed() {
    whole("whole");
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 294");
    var hanging = scene.reckon("03T15:59").bodies().get("B1").balance();
    assertEquals(List.of(), Sharing.of(hanging).get("ann").lines());
  }

  @Test
  void aCustomerWithoutAShareHasNoPartOfABatch() {
    scene.weigh(
        """
        05T10:00 B1 tub  trim  20 batch=M1
        05T10:01 B1 pack rump   2 customer=bob
        05T12:00 -  pack mince 20 batch=M1
        """);
    assertEquals(List.of(), of("bob").batchParts());
  }

  @Test
  void whatIsInTheBoxesIsTakeHomeOffalAndWhatWasAdded() {
    scene.weigh(
        """
        05T10:00 B1 pack  liver  6
        05T10:01 B1 tub   trim  90 batch=M1
        05T11:00 -  added -     10 batch=M1
        05T12:00 -  pack  mince 99 batch=M1
        """);
    // Nine tenths of the 99 are meat.
    assertEquals(kg("89.1"), of("ann").takeHome());
    assertEquals(kg("9.9"), of("ann").added());
    assertEquals(kg("99"), of("ann").batchParts().get(0).packed());
    assertEquals(kg("105"), of("ann").boxes());
  }
}
