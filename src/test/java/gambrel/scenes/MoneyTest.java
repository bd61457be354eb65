package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charges, tax and payments of the simple body: 560 alive, 300 hot, 294 cold, two packs of 200. */
class MoneyTest extends SceneTest {
  @BeforeEach
  void hangAndCut() {
    scene.simpleBody();
  }

  /** A price list with these columns beside charge and description. */
  private Scene charges(String columns, String... rows) {
    scene.file("charges.csv", "charge,description," + columns);
    for (int i = 0; i < rows.length; i++) {
      scene.add("charges.csv", "c" + i + ",Charge," + rows[i]);
    }
    return scene;
  }

  private static void assertCharges(Found found, String expected) {
    assertEquals(expected, found.statement("ann", "B1", "charges"));
  }

  @ParameterizedTest
  @CsvSource({
    "head, 50.00",
    "live, 28000.00",
    "hot, 15000.00",
    "cold, 14700.00",
    "boning, 14700.00",
    "packed, 10000.00",
    "pack, 100.00",
    "day, 150.00",
    "share, 50.00",
    "tub, 0.00"
  })
  void aChargeIsItsQuantityTimesThePrice(String basis, String expected) {
    assertCharges(charges("basis,price", basis + ",50").at(LATER), expected);
  }

  @Test
  void tubsAreChargedByGreenWeightAndBatchPacksNotAgain() {
    scene.set("bins=partly");
    scene.weigh(
        """
        05T10:40 B1 tub  trim  10 batch=M1
        05T12:00 B1 pack mince 10 batch=M1
        """);
    charges("basis,price", "tub,3", "packed,1", "pack,1");
    // 30 + 200 + 2
    assertCharges(scene.at(LATER), "232.00");
  }

  @Test
  void aMobIsChargedByTheHead() {
    scene.body("M1,lamb,2026-03-02,ann,,3").set("bins=no");
    scene.weigh(
        """
        02T10:00 M1 hot  carcase 60 pieces=3
        03T10:00 M1 cold carcase 58 pieces=3
        05T10:00 M1 pack leg     30
        """);
    var found = charges("basis,price", "head,12").at(LATER);
    assertEquals("36.00", found.statement("ann", "M1", "charges"));
  }

  @Test
  void aChargeOnAnItemCountsItAndWhatLiesUnderIt() {
    scene.weigh("05T10:40 B1 pack rump-steak 4").set("bins=partly");
    charges("basis,price,item", "packed,1,rump", "pack,1,rump");
    // 124 and 2 packs
    assertCharges(scene.at(LATER), "126.00");
  }

  @Test
  void aFreeQuantityIsTakenOffBeforeTheMinimumIsAsked() {
    // 300 - 100 is below 250
    assertCharges(charges("basis,price,free,minimum", "hot,1,100,250").at(LATER), "250.00");
    assertCharges(charges("basis,price,free,minimum", "hot,1,100,150").at(LATER), "200.00");
  }

  @Test
  void daysWithinTheFreeOnesCostNothing() {
    assertCharges(charges("basis,price,free", "day,5,14").at(LATER), "0.00");
    assertCharges(charges("basis,price,free", "day,5,2").at(LATER), "5.00");
  }

  @Test
  void aBandBeginsAtItsLowerWeightAndEndsBeforeItsUpper() {
    charges("basis,price,hot_from,hot_to", "head,1,0,300", "head,10,300,400", "head,100,300.01,");
    assertCharges(scene.at(LATER), "10.00");
  }

  @Test
  void pricesHoldFromAndToTheirDaysAgainstTheFirstPack() {
    charges(
        "basis,price,from,to",
        "head,1,,2026-03-04",
        "head,10,2026-03-05,2026-03-05",
        "head,100,2026-03-06,");
    scene.weigh("06T10:00 B1 pack chuck 0.1").set("bins=partly");
    assertCharges(scene.at(LATER), "10.00");
  }

  @Test
  void withoutAPackPricesAreThoseOfTheLastWeighing() {
    scene.body("B2,beef,2026-03-02,ann");
    scene.weigh(
        """
        02T10:00 B2 hot  carcase 300
        03T10:00 B2 cold carcase 294
        05T10:00 B2 bin  bone    100
        06T10:00 B2 bin  fat     194
        """);
    charges("basis,price,from", "head,10,2026-03-06");
    assertEquals("10.00", scene.at(LATER).statement("ann", "B2", "charges"));
    assertCharges(scene.at(LATER), "0.00");
  }

  @Test
  void aChargeMayBeForOneSpeciesClassOrBodyOnly() {
    scene.file(
        "bodies.csv",
        "body,species,class,killed,customer",
        "B1,beef,cow,2026-03-02,ann",
        "B2,beef,cow,2026-03-02,ann");
    charges(
        "basis,price,species,class,body",
        "head,1,beef,,",
        "head,10,,cow,",
        "head,100,,,B1",
        "head,1000,pork,,",
        "head,1000,,steer,",
        "head,1000,,,B2");
    assertCharges(scene.at(LATER), "111.00");
  }

  @Test
  void amountsAreRoundedHalfUpToTheMinorUnit() {
    // 300 · 0.00335 = 1.005
    assertCharges(charges("basis,price", "hot,0.00335").at(LATER), "1.01");
  }

  @Test
  void taxIsRoundedHalfUpOnTheLine() {
    // 10 % of 0.05 is 0.005 twice, not 10 % of 0.10 once
    var found = charges("basis,price,tax_percent", "head,0.05,10", "head,0.05,10").at(LATER);
    assertEquals("0.02", found.statement("ann", "B1", "tax"));
    assertCharges(found, "0.10");
    assertEquals("0.12", found.statement("ann", "B1", "due"));
  }

  @Test
  void includedTaxIsTakenOutOfTheLine() {
    scene.set("tax_included=yes");
    var found = charges("basis,price,tax_percent", "head,100,10").at(LATER);
    // 100 · 10 / 110 = 9.0909
    assertEquals("9.09", found.statement("ann", "B1", "tax"));
    assertCharges(found, "90.91");
    assertEquals("100.00", found.statement("ann", "B1", "due"));
  }

  @Test
  void aNegativePriceIsACreditForTheHide() {
    var found = charges("basis,price", "head,50", "head,-12.50").at(LATER);
    assertCharges(found, "37.50");
  }

  @Test
  void aLineIsComputedOnceForTheBodyAndDividedByShares() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    var found = charges("basis,price,tax_percent", "head,10.01,10").at(LATER);
    assertCharges(found, "5.01");
    assertEquals("5.00", found.statement("bob", "B1", "charges"));
    // 1.00 of tax
    assertEquals("0.50", found.statement("ann", "B1", "tax"));
    assertEquals("0.50", found.statement("bob", "B1", "tax"));
  }

  @Test
  void aCreditIsDividedBySizeAndThenNegated() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    var found = charges("basis,price", "head,-10.01").at(LATER);
    assertCharges(found, "-5.01");
    assertEquals("-5.00", found.statement("bob", "B1", "charges"));
  }

  @Test
  void everyCustomerInSharesPaysAShareChargeInFull() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/4", "B1,bob,3/4");
    var found = charges("basis,price,tax_percent", "share,20,10").at(LATER);
    assertCharges(found, "20.00");
    assertEquals("20.00", found.statement("bob", "B1", "charges"));
    assertEquals("2.00", found.statement("bob", "B1", "tax"));
  }

  @Test
  void aChargeOfUnknownQuantityHoldsAndCannotBeReleased() {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,ann");
    charges("basis,price", "live,1").release("B1", "release", "10");
    assertEquals("held charge-unknown", scene.at(LATER).state("B1"));
  }

  @Test
  void aChargeInABandHoldsWhereTheHotWeightIsNotKnown() {
    scene.set("rail=cold").body("B2,beef,2026-03-02,ann");
    scene.weigh(
        """
        03T10:00 B2 cold carcase 294
        05T10:00 B2 pack rump    294
        """);
    charges("basis,price,hot_from", "head,1,250");
    assertEquals("held charge-unknown", scene.at(LATER).state("B2"));
    assertEquals("issued", scene.at(LATER).state("B1"));
  }

  @Test
  void nobodyIsBilledForTheShopsOwnBody() {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,shop");
    // Its live weight is not known, and nobody needs it.
    assertEquals("closed", charges("basis,price", "live,1").at(LATER).state("B1"));
  }

  @Test
  void paymentsThatNameCustomerAndBodyAreTakenOffWhatIsDue() {
    charges("basis,price", "head,100");
    scene.file(
        "payments.csv",
        "customer,body,date,amount",
        "ann,B1,2026-03-04,30",
        "ann,B1,2026-03-31,0.50",
        "ann,B1,2026-04-01,20",
        "ann,,2026-03-04,7",
        "bob,B1,2026-03-04,5");
    var found = scene.at(LATER);
    assertEquals("30.50", found.statement("ann", "B1", "paid"));
    assertEquals("69.50", found.statement("ann", "B1", "due"));
  }
}
