package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Severity;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The folder as a whole, and what holds for every table in it. */
class ShopReaderTest {
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files = new ShopFiles(folder);
  }

  @Test
  void settingsAndBodiesAreEnoughForAShop() {
    files.without("customers.csv");
    var shop = files.clean();
    assertEquals(Set.of("B1"), shop.bodies().keySet());
    assertTrue(shop.customers().isEmpty());
    assertTrue(shop.payments().isEmpty());
  }

  @Test
  void withoutFolderSettingsOrBodiesThereIsNoShop() {
    var nowhere = folder.resolve("nowhere");
    var refusal =
        assertThrows(UnreadableShop.class, () -> ShopReader.read(nowhere, new ArrayList<>()));
    assertEquals("the shop folder is missing", refusal.getMessage());
    files.without("bodies.csv");
    assertEquals("bodies.csv is missing", files.whyUnreadable());
    files.without("shop.properties");
    assertEquals("shop.properties is missing", files.whyUnreadable());
  }

  @Test
  void bodiesWithoutAnyLineAreNoShop() {
    files.with("bodies.csv", "");
    assertEquals("bodies.csv is empty", files.whyUnreadable());
  }

  @Test
  void aFileThatIsNoRegularOneIsNoShop() throws IOException {
    Files.createSymbolicLink(folder.resolve("charges.csv"), Path.of("/dev/zero"));
    assertEquals("charges.csv cannot be read", files.whyUnreadable());
    Files.delete(folder.resolve("charges.csv"));
    Files.createSymbolicLink(folder.resolve("charges.csv"), folder.resolve("nothing"));
    assertEquals("charges.csv cannot be read", files.whyUnreadable());
  }

  @Test
  void aFileThatIsThereAndCannotBeReadIsNoShopRatherThanAnEmptyFile() {
    files.with("payments.csv/inside", "");
    assertEquals("payments.csv cannot be read", files.whyUnreadable());
  }

  @Test
  void aMissingColumnStopsThatFileOnly() {
    files.with("payments.csv", "\ncustomer,amount\nash,5\n");
    var notice = files.refuses(NoticeCode.COLUMN_MISSING, "payments.csv", 2);
    assertEquals(Severity.STOP, notice.severity());
    assertTrue(files.read().shop().payments().isEmpty());
  }

  @Test
  void anEmptyFileHasNoRows() {
    files.with("payments.csv", "").with("shares.csv", "\n\n");
    assertTrue(files.clean().payments().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "body,species,class\nB1,beef,steer\n",
        "class,body,species\r\nsteer,B1,beef\r\n",
        "body;species;class\nB1;beef;steer\n",
        "body\tspecies\tclass\nB1\tbeef\tsteer",
        "\uFEFFbody,species,class,,\n B1 ,\"beef\",steer,,\n,,,,\n\n"
      })
  void columnsMayStandInAnyOrderAndDelimiter(String text) {
    files.with("bodies.csv", text);
    assertEquals("steer", files.clean().bodies().get("B1").category());
  }

  @Test
  void aNoticeStandsOnTheLineOnWhichItsRowStarts() {
    files.with(
        "bodies.csv", "body,species,note\nB1,beef,\"two\nlines\"\n\nB2,unicorn,\"a\nb\"\nB3,ox,\n");
    var places = files.read().notices().stream().map(Notice::place).toList();
    assertEquals(List.of(new Place("bodies.csv", 5), new Place("bodies.csv", 7)), places);
    assertEquals("B2,unicorn,\"a\nb\"", files.read().notices().get(0).raw());
  }

  @Test
  void aRowWithMoreCellsThanColumnsCannotBeRead() {
    files.with("payments.csv", "customer,date,amount\nash,2026-02-01,10,50\nash,2026-02-01,9,\n");
    var notice = files.refuses(NoticeCode.SHOP_ROW_BAD, "payments.csv", 2);
    assertEquals(Severity.HOLD, notice.severity());
    assertEquals(1, files.read().shop().payments().size());
  }

  @Test
  void aQuoteThatIsNeverClosedCostsOneRow() {
    files.with("bodies.csv", "body,species,note\nB1,beef,\"oh\nB2,beef,\nB3,lamb,\"fine\"\n");
    files.refuses(NoticeCode.SHOP_ROW_BAD, "bodies.csv", 2);
    assertEquals(Set.of("B1", "B2", "B3"), files.read().shop().bodies().keySet());
  }

  @Test
  void aNameThatIsNotUtf8IsNotPrintedWithHoles() {
    files.with(
        "customers.csv", "customer,name\nash,Ash\nzoe,Zoé\n".getBytes(StandardCharsets.ISO_8859_1));
    files.refuses(NoticeCode.SHOP_ROW_BAD, "customers.csv", 3);
    var zoe = files.read().shop().customers().get("zoe");
    assertEquals("zoe", zoe.name());
  }

  @Test
  void aRowWithControlCharactersCannotBeRead() {
    files.with("customers.csv", "customer,name\nash,A\u0007sh\nbea,\"Bea\nand Co\"\n\u001A");
    files.refuses(NoticeCode.SHOP_ROW_BAD, "customers.csv", 2);
    assertEquals("ash", files.read().shop().customers().get("ash").name());
  }

  @Test
  void ofTwoColumnsOfOneNameTheFirstIsReadAndNothingGoesOut() {
    files.with("bodies.csv", "body,species,Species\nB1,beef,lamb\n");
    var notice = files.refuses(NoticeCode.COLUMN_UNKNOWN, "bodies.csv", 1);
    assertEquals(Severity.STOP, notice.severity());
    assertEquals("beef", files.read().shop().bodies().get("B1").species().id());
  }
}
