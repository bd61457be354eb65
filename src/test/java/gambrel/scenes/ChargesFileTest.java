package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code charges.csv}: the charges of the simple body, 300 hot, two packs of 200. */
class ChargesFileTest extends SceneTest {
  @BeforeEach
  void hangAndCut() {
    scene.simpleBody();
    scene.file("charges.csv", "charge,description,basis,price,free,minimum,tax_percent,item");
  }

  private Scene price(String... rows) {
    return scene.add("charges.csv", rows);
  }

  private static List<String> lines(Found found, String... where) {
    return found.rows("charges", where).stream()
        .map(
            row ->
                String.join(
                    " ",
                    row.get("charge"),
                    row.get("quantity"),
                    row.get("unit"),
                    row.get("price"),
                    row.get("amount"),
                    row.get("tax_percent"),
                    row.get("tax")))
        .toList();
  }

  @Test
  void aLineSaysWhatWasChargedInTheOrderOfTheStatement() {
    price(
        "kill,Kill,head,50,,,10,",
        "cut,Cut,hot,1.10,100,,5.5,",
        "pack,Pack,pack,0.25,,10,,",
        "hide,Hide,head,-12.5,,,,");
    assertEquals(
        List.of(
            "kill 1 head 50 50.00 10 5.00",
            "cut 200.000 kg 1.10 220.00 5.5 12.10",
            "pack 10 pack 0.25 2.50 0 0.00",
            "hide 1 head -12.5 -12.50 0 0.00"),
        lines(scene.at(LATER)));
  }

  @Test
  void whatCostsNothingIsNoLineHereAndOnThePage() {
    price("kill,Kill,head,50,,,,", "hang,Hanging,day,5,14,,,");
    assertEquals(List.of("kill 1 head 50 50.00 0 0.00"), lines(scene.at(LATER)));
  }

  @Test
  void theQuantityIsTheBodysAndTheAmountTheCustomers() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/4", "B1,bob,3/4");
    price("cut,Cut,hot,1,,,10,", "split,Split,share,20,,,,");
    var found = scene.at(LATER);
    assertEquals(
        List.of("cut 300.000 kg 1 75.00 10 7.50", "split 1 share 20 20.00 0 0.00"),
        lines(found, "customer=ann"));
    assertEquals(
        List.of("cut 300.000 kg 1 225.00 10 22.50", "split 1 share 20 20.00 0 0.00"),
        lines(found, "customer=bob"));
  }

  @Test
  void anIncludedTaxIsTakenOutOfTheAmount() {
    scene.set("tax_included=yes");
    price("kill,Kill,head,100,,,10,");
    // 100 · 10 / 110 = 9.0909
    assertEquals(List.of("kill 1 head 100 90.91 10 9.09"), lines(scene.at(LATER)));
  }

  @Test
  void aTextThatLooksLikeAFormulaIsGuardedAndReadBack() {
    price("=k,+Kill,head,50,,,,");
    var first = scene.nextNight("12T02:00");
    assertEquals("'=k '+Kill", text(first));
    assertEquals("'=k '+Kill", text(scene.nextNight("13T02:00")));
  }

  private static String text(Found found) {
    return found.cell("charges", "charge") + ' ' + found.cell("charges", "description");
  }

  @Test
  void aRevisionReplacesItsLinesAndOnlyThen() {
    price("kill,Kill,head,50,,,,");
    scene.nextNight("12T02:00");
    scene.file("charges.csv", "charge,description,basis,price", "kill,Kill,head,60");
    assertEquals("1 50.00", number(scene.nextNight("13T02:00")));
    scene.correct("bench", "3", "net", "119.9", "13");
    assertEquals("2 60.00", number(scene.nextNight("14T02:00")));
  }

  private static String number(Found found) {
    return found.cell("charges", "number") + ' ' + found.cell("charges", "amount");
  }

  @ParameterizedTest
  @CsvSource({
    "tub, beef, '', ann, '', true",
    "tub, '', trim, ann, '', true",
    "tub, pork, '', ann, '', false",
    "tub, beef, rump, ann, '', false",
    "packed, beef, '', ann, '', false",
    "tub, beef, '', shop, '', false",
    "tub, beef, '', ann, batch=M1, false"
  })
  void aTubWithoutABatchIsMarkedWhereAChargeByGreenWeightCouldMeanIt(
      String basis, String species, String item, String owner, String batch, boolean marked) {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02," + owner);
    scene.file("charges.csv", "charge,description,basis,price,species,item");
    scene.add("charges.csv", "s,Sausages,%s,3.60,%s,%s".formatted(basis, species, item));
    scene.weigh("05T10:40 B1 tub trim 20 " + batch);
    assertEquals(marked, scene.at(LATER).notices().contains("mark tub-without-batch"));
  }
}
