package gambrel.files.folder;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Customer;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Customers, bodies, and who owns how much of them. */
class BodiesAndOwnersTest {
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files = new ShopFiles(folder);
  }

  private Body onlyBody() {
    return files.read().shop().bodies().get("B1");
  }

  @Test
  void everyColumnOfABodyIsRead() {
    files.with(
        "bodies.csv",
        """
        body,species,class,killed,live_weight,live_guessed,age_months,fat_mm,customer,head,tags,\
        mark,outcome,chiller,cut_by,supplier,cost,note
        B1,Beef,steer,2026-02-01,512.5,yes,18,7,ash,2,17 0042,blue tag,whole,north,2026-02-20,Tarn Farm,900.50,thanks
        """);
    assertEquals(
        new Body(
            "B1",
            Species.BEEF,
            "steer",
            Optional.of(LocalDate.of(2026, 2, 1)),
            Optional.of(Weight.ofThousandths(512_500)),
            true,
            Optional.of(18),
            "7",
            "ash",
            Map.of(),
            2,
            List.of("17", "0042"),
            "blue tag",
            Outcome.WHOLE,
            "north",
            Optional.of(LocalDate.of(2026, 2, 20)),
            "Tarn Farm",
            Optional.of(new Money(90_050)),
            "thanks"),
        files.clean().bodies().get("B1"));
  }

  @ParameterizedTest
  @CsvSource({
    "killed,2026-02-30",
    "live_weight,-5",
    "live_guessed,perhaps",
    "age_months,1.5",
    "head,0",
    "outcome,lost",
    "cut_by,soon",
    "cost,1.005"
  })
  void aCellOfABodyThatCannotBeReadIsTakenAsBlankAndTheBodyWaits(String column, String bad) {
    files.with("bodies.csv", "body,species," + column + "\nB1,beef,\n");
    var blank = files.clean().bodies();
    files.with("bodies.csv", "body,species," + column + "\nB1,beef," + bad + "\n");
    var notice = files.refuses(NoticeCode.SHOP_ROW_BAD, "bodies.csv", 2);
    assertEquals("B1", notice.body());
    String message = ENGLISH.message(notice);
    assertTrue(message.startsWith(column + " \"" + bad + "\" "), message);
    assertEquals(blank, files.read().shop().bodies());
    assertEquals(Severity.HOLD, notice.severity());
    var unread = files.read().shop().unread();
    assertEquals(Optional.of("B1"), unread.get(0).named("body"));
    assertEquals(column + " " + bad, unread.get(0).column() + " " + unread.get(0).cell());
  }

  @Test
  void aBodyOfUnknownSpeciesIsLeftOut() {
    files.with("bodies.csv", "body,species\nB1,beef\nB2,ox\nB3,\n");
    assertEquals(Set.of("B1"), files.read().shop().bodies().keySet());
    assertEquals(2, files.read().notices().size());
  }

  @Test
  void ofTwoRowsWithOneIdTheFirstIsUsed() {
    files.with("bodies.csv", "body,species\nB1,beef\nB1,lamb\n");
    files.refuses(NoticeCode.ID_TWICE, "bodies.csv", 3);
    assertEquals(Species.BEEF, onlyBody().species());
  }

  @Test
  void anIdThatASpreadsheetMadeANumberIsRefusedWithTheCure() {
    files.with("bodies.csv", "body,species\nB1,beef\n9.82E+14,beef\n");
    var notice = files.refuses(NoticeCode.SPREADSHEET_DAMAGE, "bodies.csv", 3);
    assertTrue(ENGLISH.advice(notice).contains("as text"), ENGLISH.advice(notice));
  }

  @Test
  void anOwnerIsFoundWithoutHisLeadingZeros() {
    files.with("customers.csv", "customer,name\n0017,Ash\n");
    files.with("bodies.csv", "body,species,customer\nB1,beef,17\n");
    files.refuses(NoticeCode.ID_ZEROS, "bodies.csv", 2);
    assertEquals("0017", onlyBody().customer());
  }

  @ParameterizedTest
  @ValueSource(strings = {"nobody", "1.2E+14"})
  void aBodyOfAnUnknownOwnerIsNotTakenForTheShopsOwn(String customer) {
    files.with("bodies.csv", "body,species,customer\nB1,beef," + customer + "\n");
    assertEquals("B1", files.onlyNotice().body());
    assertEquals(Set.of(customer), onlyBody().owners().keySet());
  }

  @Test
  void theShopOwnsWhatItIsNamedForOrNobodyIs() {
    files.with("bodies.csv", "body,species,customer\nB1,beef,shop\nB2,beef,\n");
    var bodies = files.clean().bodies();
    assertEquals(Set.of(Customer.SHOP), bodies.get("B1").owners().keySet());
    assertEquals(Set.of(Customer.SHOP), bodies.get("B2").owners().keySet());
  }

  @Test
  void aCustomerNeedsANameAndIsNotTheShop() {
    files.with(
        "customers.csv",
        "customer,name,address,email,language\nash,Ash,1 Rd;Town,a@b,en_au\nx,,,,\nshop,Us,,,\n");
    assertEquals(
        Map.of(
            "ash",
            new Customer("ash", "Ash", "1 Rd;Town", "a@b", "en-AU", Customer.Delivery.EMAIL),
            "x",
            new Customer("x", "x", "", "", "", Customer.Delivery.PRINT)),
        files.read().shop().customers());
    assertEquals(2, files.read().notices().size());
  }

  @Test
  void sharesTakeThePlaceOfTheCustomerAndRowsOfOneCustomerAddUp() {
    files.with("bodies.csv", "body,species,customer\nB1,beef,ash\n");
    files.with("shares.csv", "body,customer,share\nB1,bea,1/4\nB1,bea,25%\nB1,shop,1 of 2\n");
    var body = files.clean().bodies().get("B1");
    assertEquals(Map.of("bea", BigFraction.of(1, 2), "shop", BigFraction.of(1, 2)), body.owners());
    assertTrue(body.sharesAddUp());
  }

  @Test
  void sharesThatDoNotAddUpAreReadAsTheyStand() {
    files.with("shares.csv", "body,customer,share\nB1,ash,1/2\nB1,bea,1/3\n");
    assertFalse(files.clean().bodies().get("B1").sharesAddUp());
  }

  @ParameterizedTest
  @CsvSource({
    "01-Feb,SPREADSHEET_DAMAGE",
    "half,SHOP_ROW_BAD",
    "'',SHOP_ROW_BAD",
    "'\"1/2',SHOP_ROW_BAD"
  })
  void aBodyWithAShareThatCannotBeReadWaits(String share, NoticeCode code) {
    files.with("shares.csv", "body,customer,share\nB1,ash,1/2\nB1,bea,1/2\nB1,bea," + share + "\n");
    assertEquals(Severity.HOLD, files.refuses(code, "shares.csv", 4).severity());
    assertEquals(Optional.of("B1"), files.read().shop().unread().get(0).named("body"));
  }

  @Test
  void aShareOfAnUnknownBodyIsLeftOutAndOneOfAnUnknownCustomerIsKept() {
    files.with("shares.csv", "body,customer,share\nB7,ash,1\n");
    files.refuses(NoticeCode.REFERENCE_UNKNOWN, "shares.csv", 2);
    files.with("shares.csv", "body,customer,share\nB1,zed,1\n");
    files.refuses(NoticeCode.REFERENCE_UNKNOWN, "shares.csv", 2);
    assertEquals(Set.of("zed"), onlyBody().owners().keySet());
  }
}
