package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.TableView;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bodies of 200 kg cold lose 1 kg a day: 0.5 %, without any scatter. A kilo on the rail is worth
 * 10, a day is charged 2.
 */
class FurtherDayTableTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 5, 1);
  @TempDir private Path folder;
  private SmallShop shop;
  private int bodies;

  @BeforeEach
  void chargeTwoADay() {
    shop = new SmallShop(folder);
    shop.add("charges.csv", "hang,Hanging,day,2");
    shop.add("values.csv", "item,value,from,to\ncarcase,10,,");
  }

  private void hang(String customer, int days) {
    String body = "B" + ++bodies;
    var killed = FIRST.plusDays(bodies);
    var cut = killed.plusDays(days).toString();
    shop.beef(body, killed.toString(), customer).hung(body, killed.toString(), "205", "200");
    shop.row("rail", cut + "T06:00", body, "aged", "" + (200 - days));
    shop.cut(body, cut, "" + (150 - days), "48");
  }

  private void hangEight(String customer) {
    for (int days = 6; days <= 9; days++) {
      hang(customer, days);
      hang(customer, days);
    }
  }

  private List<TableView> may() {
    return SmallShop.tables(shop.summary("2026-05", "2026-07-01T02:00:00Z"), "further");
  }

  @Test
  void saysBesideWhatACustomerLosesWhatTheCustomerIsCharged() {
    hangEight("c-ann");
    var group = may().get(0);
    assertEquals("Customers' bodies", heads(group).get(0));
    assertEquals(
        List.of("Lost, kg", "Worth, AUD", "Charged, AUD"),
        List.of(heads(group).get(3), heads(group).get(5), heads(group).get(7)));
    assertEquals(
        List.of("Beef", "8", "7.5", "1.00", "1.00 to 1.00", "10.00", "10.00 to 10.00", "2.00", ""),
        group.rows().get(0).texts());
    assertEquals(List.of(), group.remarks());
  }

  /** After 7.5 days 192.5 of 200 are left; without another, 191.5: 1 / 191.5 is 0.52 %, of 10. */
  @Test
  void saysBesideWhatTheShopLosesWhatItMustAskFor() {
    hangEight("");
    var group = may().get(0);
    assertEquals("The shop's own bodies", heads(group).get(0));
    assertEquals(
        List.of("Lost, kg", "Price up, %", "Price up, AUD a kg"),
        List.of(heads(group).get(3), heads(group).get(5), heads(group).get(7)));
    assertEquals(
        List.of("1.00", "1.00 to 1.00", "0.52", "0.52 to 0.52", "0.052", "0.052 to 0.052"),
        group.rows().get(0).texts().subList(3, 9));
  }

  @Test
  void keepsCustomersAndTheShopApartAndSaysWhereTooFewTell() {
    hangEight("c-ann");
    hang("", 8);
    var own = may().get(1);
    assertEquals(List.of("Beef", "1", "8", "", "", "", "", "", ""), own.rows().get(0).texts());
    assertEquals(
        List.of(
            "Nothing stands where too few bodies tell: it takes 8, and 3 different numbers of days"
                + " hung."),
        own.remarks());
  }

  @Test
  void isLeftOutWhereNothingHung() {
    shop.beef("B1", "2026-05-04", "c-ann").hung("B1", "2026-05-04", "250", "245");
    assertEquals(List.of(), may());
  }

  private static List<String> heads(TableView table) {
    return table.heads().get(0).stream().map(TableView.Cell::text).toList();
  }
}
