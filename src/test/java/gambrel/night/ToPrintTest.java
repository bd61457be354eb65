package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.PrintedPages;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file to print: last night's statements of customers who get paper. */
class ToPrintTest {
  @TempDir private Path folder;
  private NightShop shop;
  private Path file;

  @BeforeEach
  void layShop() {
    shop = new NightShop(folder.resolve("shop")).without("customers.csv");
    shop.add("customers.csv", "customer,name,address,email,delivery");
    shop.add("customers.csv", "a,Zita Dorrin,1 Rail Lane; Tarn Foot,,");
    shop.add("customers.csv", "b,Éva Tallow,,b@tallow.example,print");
    shop.add("customers.csv", "c,Cleo Suet,,c@suet.example,");
    shop.beef("B1", "a").beef("B2", "b").beef("B3", "c").beef("B4", "b");
    file = shop.reports().resolve("to-print.pdf");
  }

  private List<String> printed() throws Exception {
    var inputs = Inputs.read(shop.write(), Progress.NONE);
    var documents = PdfDocuments.of(folder.resolve("shop"), inputs.shop().settings());
    new NightlyRun(inputs, documents)
        .run(shop.reports(), NightShop.moment(NightShop.NIGHT), List.of());
    return PrintedPages.of(Files.readAllBytes(file));
  }

  /** The pages of issued statements, one after the other. */
  private List<String> issued(String... statements) throws Exception {
    var pages = new ArrayList<String>();
    for (String one : statements) {
      var file = shop.reports().resolve("statements/" + one + ".pdf");
      pages.addAll(PrintedPages.of(Files.readAllBytes(file)));
    }
    return pages;
  }

  /** The pages on which something begins, by the first page that has a text. */
  private static List<Integer> pagesWith(List<String> pages, String text) {
    return IntStream.range(0, pages.size())
        .filter(i -> pages.get(i).contains(text))
        .mapToObj(i -> i + 1)
        .toList();
  }

  @Test
  void hasTheIssuedPagesInOrderOfName() throws Exception {
    var pages = printed();

    assertEquals(issued("b/B2-r1", "b/B4-r1", "a/B1-r1"), pages);
  }

  @Test
  void isTheSameWhenTheNightIsRunAgain() throws Exception {
    printed();
    var first = Files.readAllBytes(file);
    Files.delete(file);

    printed();

    assertArrayEquals(first, Files.readAllBytes(file));
  }

  @Test
  void hasOnlyTheLatestOfAStatementThatTheSameNightIssuedTwice() throws Exception {
    printed();
    shop.weigh("bench", "05T10:40:00", "B2", "rump", "2");

    var pages = printed();

    assertEquals(issued("b/B2-r2", "b/B4-r1", "a/B1-r1"), pages);
    var ring = PrintedPages.of(Files.readAllBytes(shop.reports().resolve("morning.pdf")));
    assertTrue(ring.get(0).contains("4 statements were issued."), ring.get(0));
  }

  @Test
  void beginsEachStatementOnAnOddPageForPrintingOnBothSides() throws Exception {
    shop.add("shop.properties", "print_both_sides=yes", "print_cover=yes");

    var pages = printed();

    assertEquals(List.of(1), pagesWith(pages.subList(0, 2), "Éva Tallow"));
    assertEquals("", pages.get(1).strip());
    assertTrue(pages.get(2).contains("For Éva Tallow"), pages.get(2));
    int cover = pagesWith(pages, "1 Rail Lane").get(0);
    assertEquals(
        "Zita Dorrin 1 Rail Lane Tarn Foot", pages.get(cover - 1).replaceAll("\\s+", " ").strip());
    assertTrue(pages.get(cover + 1).contains("For Zita Dorrin"));
    assertTrue(pagesWith(pages, "Page 1 of").stream().allMatch(page -> page % 2 == 1));
  }

  @Test
  void isGoneAfterANightThatIssuesNothingForPaper() throws Exception {
    shop.done(NightShop.NIGHT);
    assertTrue(Files.exists(file));

    shop.done("2026-03-07T02:00");

    assertFalse(Files.exists(file));
  }

  @Test
  void isNotMadeOfMoreStatementsThanTheLimit() {
    shop.add("shop.properties", "limit.print=2");

    var notices = shop.done(NightShop.NIGHT).notices();

    assertFalse(Files.exists(file));
    assertTrue(notices.stream().anyMatch(n -> n.code() == NoticeCode.PRINT_MANY));
  }

  @Test
  void aWordForDeliveryThatIsNoneHoldsTheCustomersBodies() {
    shop.replace("customers.csv", "b@tallow.example,print", "b@tallow.example,post");

    var report = shop.done(NightShop.NIGHT);

    assertEquals(
        List.of("B2", "B4"), report.held().stream().map(planned -> planned.body()).toList());
  }
}
