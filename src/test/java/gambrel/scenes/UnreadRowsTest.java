package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the shop wrote and nobody can read: B1, Ann's beef, and B2, Bob's lamb, wait where it could
 * concern them.
 */
class UnreadRowsTest extends SceneTest {
  private static final String WAITS = "held row-unread";
  private static final String CHARGES =
      "charge,description,basis,price,species,class,item,body,tax_percent,from,to";

  @BeforeEach
  void twoBodies() {
    scene.simpleBody().body("B2,lamb,2026-03-02,bob,");
    scene.weigh(
        """
        02T11:00 B2 hot  carcase 20
        03T11:00 B2 cold carcase 19.6
        05T11:00 B2 pack leg     19.6 ticket=70
        """);
  }

  /** Which of the two waits: {@code both}, {@code neither}, or the one. */
  private static String waiting(Found found) {
    boolean one = found.state("B1").equals(WAITS);
    boolean other = found.state("B2").equals(WAITS);
    assertTrue(one || found.state("B1").equals("issued"), found.state("B1"));
    assertTrue(other || found.state("B2").equals("issued"), found.state("B2"));
    return one && other ? "both" : one ? "B1" : other ? "B2" : "neither";
  }

  /** The same on a first night; the exit code is 1 whoever waits. */
  private String waiting() {
    var found = scene.at(LATER);
    assertEquals(1, found.exit());
    return waiting(found);
  }

  @ParameterizedTest
  @CsvSource({
    "'k,Kill,head,1.5O,,,,,,,', both",
    "'k,Kill,head,95.00 EUR,,,,,,,', both",
    "'k,Kill,head,,,,,,,,', both",
    "'k,,head,95,,,,,,,', both",
    "'k,Kill,hott,95,,,,,,,', both",
    "'k,Kill,head,95,,,,,1O,,', both",
    "'k,Kill,head,95,ox,,,,,,', both",
    "'k,Kill,head,95,,,unicorn,,,,', both",
    "'k,Kill,head,95,,,,,,2026-03-02,2026-03-01', both",
    "'k,Kill,head,95,,,,,,,,extra', both",
    "'k,Kill,head,9x,lamb,,,,,,', B2",
    "'k,Kill,head,9x,,,rump,,,,', B1",
    "'k,Kill,head,9x,,,,B2,,,', B2",
    "'k,Kill,head,9x,lamb,,rump,,,,', neither",
    "'k,Kill,head,9x,lamb,,,B9,,,', B2",
    "'k,Kill,head,9x,,,,B9,,,', both"
  })
  void aChargeHoldsTheBodiesThatItCouldBeFor(String row, String waiting) {
    scene.file("charges.csv", CHARGES, row);
    assertEquals(waiting, waiting());
    assertEquals(
        "hold", scene.at(LATER).rows("notices", "file=charges.csv").get(0).get("severity"));
  }

  @Test
  void aChargeForAnUnknownBodyIsForNobody() {
    scene.file("charges.csv", CHARGES, "k,Kill,head,95,,,,B9,,,");
    var found = scene.at(LATER);
    assertEquals("neither", waiting(found));
    assertEquals("mark", found.notice("reference-unknown", "severity"));
    assertEquals(0, found.exit());
  }

  @ParameterizedTest
  @CsvSource({
    "'bob,2026-03-04,1O.00,', B2",
    "'bob,04.03.2026,10,', B2",
    "'bob,,10,', B2",
    "'bob,2026-03-04,10.005,', B2",
    "',2026-03-04,10,', both",
    "'zed,2026-03-04,1O,', both",
    "'zed,2026-03-04,1O,B1', B1",
    "'ann,2026-03-04,1O,B2', neither",
    "'ann,2026-03-04,10,50,B2', both",
    "'bob,2026-03-31,1O,', B2",
    "'bob,2026-04-01,1O,', neither"
  })
  void aPaymentHoldsThoseWhoMayHavePaid(String row, String waiting) {
    scene.file("payments.csv", "customer,date,amount,body", row);
    assertEquals(waiting, waiting());
  }

  /** Trim of both goes into M1, of B1 into 07, the shop's own into M3. */
  private void batches(String... rows) {
    scene.set("bins=partly");
    scene.file("batches.csv", "batch,product,made,gain,due,added").add("batches.csv", rows);
    scene.weigh(
        """
        05T10:40 B1 tub  trim  2 batch=M1
        05T10:41 B2 tub  trim  1 batch=M1
        05T10:42 -  pack mince 3 batch=M1
        05T10:43 B1 tub  trim  1 batch=07
        05T10:44 -  pack mince 1 batch=07
        05T10:45 -  tub  trim  1 batch=M3
        05T10:46 -  pack mince 1 batch=M3
        """);
  }

  @ParameterizedTest
  @CsvSource({
    "'M1,Mince,,,2026-13-01,', both",
    "'M1,Mince,,yse,,pepper', both",
    "'M1,Mince,03/O4,,,', both",
    "'M1,M�nce,,,,pepper', both",
    "'M1,Mince,,,,p�pper', both",
    "'07,Mince,,yse,,', B1",
    "'7,Mince,,yse,,', B1",
    "'M3,Mince,,yse,,', neither",
    "'M4,Mince,,yse,,', neither",
    "',Mince,,,,pepper', both",
    "'1.23E+14,Mince,,,,', both",
    "'M�,Mince,,,,', both",
    "'M3,Mince,,,,pepper,mustard', both"
  })
  void aBatchHoldsTheBodiesWithMeatInIt(String row, String waiting) {
    batches(row);
    assertEquals(waiting, waiting());
    assertEquals(
        "hold", scene.at(LATER).rows("notices", "file=batches.csv").get(0).get("severity"));
  }

  @Test
  void aBatchWithoutALegibleNameHoldsNoBodyWithoutABatch() {
    scene.file("batches.csv", "batch,product", ",Mince");
    assertEquals("neither", waiting());
  }

  @Test
  void aBatchHoldsOnlyWhatWouldGoOut() {
    batches("M1,Mince,,,,pepper", "07,Mince,,,,");
    assertEquals("neither", waiting(scene.nextNight("06T02:00")));
    scene.file("batches.csv", "batch,gain", "M1,yse", "07,");
    assertEquals("neither", waiting(scene.nextNight("07T02:00")));
    scene.release("B2", "reissue", "07T09:00");
    assertEquals("B2", waiting(scene.nextNight("08T02:00")));
  }

  @Test
  void aChargeHoldsOnlyWhatWouldGoOut() {
    assertEquals("neither", waiting(scene.nextNight("06T02:00")));
    scene.file("charges.csv", CHARGES, "k,Kill,head,1.5O,,,,,,,");
    scene.release("B2", "reissue", "06T09:00");
    var second = scene.nextNight("07T02:00");
    assertEquals("B2", waiting(second));
    assertEquals(1, second.exit());
    scene.weigh("06T12:00 B1 pack liver 1");
    var third = scene.nextNight("08T02:00");
    assertEquals("both", waiting(third));
    assertEquals("1", third.statement("ann", "B1", "revision"));
    scene.file("charges.csv", CHARGES, "k,Kill,head,1.50,,,,,,,");
    assertEquals("2", scene.nextNight("09T02:00").statement("ann", "B1", "revision"));
  }

  @ParameterizedTest
  @CsvSource({"'ann,A\uFFFDn', B1", "'bob,', B2", "',Cid', both", "'ann,Ann,x,y', both"})
  void aCustomerHoldsHisBodiesEvenIfIssued(String row, String waiting) {
    assertEquals("neither", waiting(scene.nextNight("06T02:00")));
    scene.file("customers.csv", "customer,name", row);
    Stream.of("ann,Ann", "bob,Bob")
        .filter(other -> !row.startsWith(other.substring(0, 4)))
        .forEach(other -> scene.add("customers.csv", other));
    var found = scene.nextNight("07T02:00");
    assertEquals(waiting, waiting(found));
    assertEquals("1", found.statement("ann", "B1", "revision"));
  }

  @Test
  void aCustomerWhoseBodyIsSharedByOthersHoldsNothing() {
    scene.file("shares.csv", "body,customer,share", "B2,ann,1");
    scene.file("customers.csv", "customer,name", "ann,Ann", "bob,");
    assertEquals("neither", waiting());
  }

  @ParameterizedTest
  @CsvSource({
    "'B1,beef,2O26-03-02,ann', B1",
    "'B1,beef,2026-03-02,\uFFFDnn', B1",
    "',lamb,2026-03-02,bob', B2",
    "',beef,2026-03-02,bob', neither"
  })
  void aBodyWhoseRowCannotBeReadWaits(String row, String waiting) {
    var other = row.startsWith("B1") ? "B2,lamb,2026-03-02,bob" : "B1,beef,2026-03-02,ann";
    scene.file("bodies.csv", "body,species,killed,customer", row, other);
    if (!row.startsWith("B1")) {
      scene.body("B2,lamb,2026-03-02,bob");
    }
    assertEquals(waiting, waiting());
  }

  @ParameterizedTest
  @ValueSource(strings = {"B2,limb,2026-03-02,bob", "B2,,2026-03-02,bob"})
  void aBodyWithoutALegibleSpeciesIsLeftOutAndItsRowsAreSetAside(String row) {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,ann", row);
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertEquals(0, found.rows("bodies", "body=B2").size());
    assertEquals("9 = 6 + 0 + 0 + 3", found.counts());
    assertEquals(1, found.exit());
    assertTrue(found.notice("body-unknown", "message").contains("bodies.csv, line 3. 3 rows"));
    assertEquals("Correct line 3 of bodies.csv.", found.notice("body-unknown", "advice"));
  }

  @ParameterizedTest
  @CsvSource({
    "'B2,bob,half', B2",
    "'B2,,1', B2",
    "',bob,1', B2",
    "'B2,cat,1/0', B2",
    "'B2,bob,1,2', both"
  })
  void aShareHoldsItsBody(String row, String waiting) {
    scene.file("shares.csv", "body,customer,share", row);
    assertEquals(waiting, waiting());
  }

  @ParameterizedTest
  @CsvSource({
    "'bench,70,,net,19,Eve,2026-06-31,typo', B2",
    "'bench,70,,net,19,,2026-03-06,typo', B2",
    "',70,,net,19,Eve,2026-03-06,typo', B2",
    "'bench,60-75,,nett,19,Eve,2026-03-06,typo', B2",
    "'x,exports/a.csv:10,,nett,19,Eve,2026-03-06,typo', B2",
    "'bench,70,,body,B1,Eve,,typo', both",
    "'bench,70,,bodi,B1,Eve,2026-03-06,typo', both",
    "'bench,70,2026-03-06,nett,19,Eve,2026-03-06,typo', neither",
    "'bench,99,,nett,19,Eve,2026-03-06,typo', neither",
    "'bench,,,net,19,Eve,2026-03-06,typo', both",
    "'bench,05-Dec,,net,19,Eve,2026-03-06,typo', both",
    "'bench,70,,nett,19,Eve,2026-04-01,typo', neither"
  })
  void aCorrectionHoldsTheBodiesOfTheRowsThatItNames(String row, String waiting) {
    scene.add("corrections.csv", row);
    assertEquals(waiting, waiting());
  }

  /** A tub of B1 is in M1; one of B2, whose correction cannot be read, is in {@code batch}. */
  private void correctTheSecondTub(String batch) {
    scene.set("bins=partly").file("batches.csv", "batch,due", "M1,2026-05-01", "M2,2026-05-01");
    scene.weigh("05T12:00 B1 tub trim 0.1 batch=M1 ticket=80");
    scene.weigh("05T12:01 B2 tub trim 0.1 batch=" + batch + " ticket=81");
    scene.add("corrections.csv", "bench,81,,net,1O,Eve,2026-06-31,typo");
  }

  @Test
  void aCorrectionOfATubHoldsAllBodiesOfItsBatch() {
    correctTheSecondTub("M1");
    assertEquals("both", waiting());
  }

  @Test
  void aShareOfAnIllegibleBodyHoldsABodyThatIsNobodysToo() {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,ann");
    scene.body("B2,lamb,2026-03-02,");
    scene.file("shares.csv", "body,customer,share", ",bob,1/2", ",cat,1/2");
    assertEquals("B2", waiting());
  }

  @Test
  void onlyARowOfSharesHoldsABodyThatIsNobodys() {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,ann");
    scene.body("B2,lamb,2026-03-02,");
    scene.file("payments.csv", "customer,date,amount", "bob,2026-03-04,1O");
    assertEquals("closed", scene.at(LATER).state("B2"));
  }

  @Test
  void aShareOfAnotherHoldsNoBodyWithACustomerAndNoneWithShares() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1", ",cat,1/2");
    assertEquals("neither", waiting());
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,");
    scene.body("B2,lamb,2026-03-02,bob");
    assertEquals("neither", waiting());
  }

  @Test
  void aPaymentForABodyHoldsItIfItIsTheCustomersThoughOthersShareIt() {
    scene.file("shares.csv", "body,customer,share", "B2,ann,1");
    scene.file("payments.csv", "customer,date,amount,body", "bob,2026-03-04,1O,B2");
    assertEquals("B2", waiting());
  }

  @Test
  void aCustomerHoldsABodyOfWhichARowNamesHim() {
    scene.weigh("05T10:40 B1 pack rump 0.1 customer=cat");
    scene.file("customers.csv", "customer,name", "cat,");
    var found = scene.at(LATER);
    assertTrue(found.state("B1").contains("row-unread"), found.state("B1"));
    assertEquals("issued", found.state("B2"));
  }

  @Test
  void aCorrectionOfATubHoldsNoBodyOfAnotherBatch() {
    correctTheSecondTub("M2");
    assertEquals("B2", waiting());
  }

  @Test
  void noReleaseCoversIt() {
    scene.file("shares.csv", "body,customer,share", "B2,bob,half");
    scene.release("B2", "release", "07T09:00");
    assertEquals("B2", waiting());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "B2,bob,half | share \"half\" in line 2 of shares.csv",
        "B2,,1       | customer is blank in line 2 of shares.csv",
        "B2,bob,1,2  | waits: line 2 of shares.csv cannot be read"
      })
  void itsWordsNameFileLineColumnAndCell(String row, String words) {
    scene.file("shares.csv", "body,customer,share", row);
    var held = scene.at(LATER).rows("notices", "code=held", "body=B2").get(0).get("message");
    assertTrue(held.contains(words), held);
  }

  @Test
  void aCodeWhoseRowCannotBeReadIsUnknownWhateverShorterOneFits() {
    scene.add("codes.csv", "7*,mince,pack,,,", "71,rump,pakc,,,");
    scene.weigh("05T10:40 B1 pack rump 0.1 code=71");
    var found = scene.at(LATER);
    assertEquals("held row-set-aside", found.state("B1"));
    assertTrue(found.notice("code-unknown", "message").contains("codes.csv, line 3"));
    assertTrue(found.notice("code-unknown", "advice").contains("line 3 of codes.csv"));
  }

  @Test
  void anItemWhoseRowCannotBeReadIsUnknownThoughItIsBuiltIn() {
    scene.file("cuts.csv", "species,item,parent,name,kind", "beef,mince,,,meet");
    var found = scene.at(LATER);
    assertEquals("held loss-high;row-set-aside", found.state("B1"));
    assertEquals("issued", found.state("B2"));
    assertTrue(found.notice("item-not-in-species", "message").contains("cuts.csv, line 2"));
  }

  @Test
  void anItemOfAnotherSpeciesIsKnownWhereItsRowIsNotConcerned() {
    scene.file("cuts.csv", "species,item,parent,name,kind", "lamb,mince,,,meet");
    assertEquals("neither", waiting(scene.at(LATER)));
  }

  @Test
  void aNewItemThatHangsFromNothingIsUnknownAndItsCodeIsNot() {
    scene.file("cuts.csv", "species,item,parent,name,kind", "beef,bobble,nowhere,Bobble,meat");
    scene.weigh("05T10:40 B1 pack bobble 0.1");
    var found = scene.at(LATER);
    assertEquals("held row-set-aside", found.state("B1"));
    assertTrue(found.notice("item-not-in-species", "message").contains("cuts.csv, line 2"));
  }

  @Test
  void aSecondRowOfAnIdThatCannotBeReadHoldsToo() {
    scene.add("bodies.csv", "B2,lamb,2O26-03-02,bob,");
    assertEquals("B2", waiting(scene.at(LATER)));
  }

  @Test
  void aSecondRowOfAnIdThatCanBeReadIsLeftOut() {
    scene.add("bodies.csv", "B2,lamb,2026-03-03,bob,");
    var found = scene.at(LATER);
    assertEquals("neither", waiting(found));
    assertEquals("mark", found.notice("id-twice", "severity"));
  }
}
