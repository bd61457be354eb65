package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
class FurtherDayAnswerTest {
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

  /** The sentences about one more day; the sentence before them is about cuts. */
  private List<String> may() {
    return SmallShop.remarks(
            shop.summary("2026-05", "2026-07-01T02:00:00Z"),
            "What to leave on which cut; one more day")
        .stream()
        .map(sentence -> sentence.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void saysBesideWhatACustomerLosesWhatTheCustomerIsCharged() {
    hangEight("c-ann");
    assertEquals(
        List.of(
            "One more day takes 1.00 kg, worth $10.00, off a customer’s body (beef) and adds $2.00 to"
                + " the bill: it pays only the customer who wants the meat older."),
        may());
  }

  /** After 7.5 days 192.5 of 200 are left; without another, 191.5: 1 / 191.5 is 0.52 %. */
  @Test
  void saysBesideWhatTheShopLosesWhatItMustAskFor() {
    hangEight("");
    assertEquals(
        List.of(
            "One more day takes 1.00 kg, worth $10.00, off one of the shop’s own (beef): it pays only"
                + " if all of its meat then sells for 0.52% more."),
        may());
  }

  @Test
  void keepsCustomersAndTheShopApartAndSaysWhereTooFewTell() {
    hangEight("c-ann");
    hang("", 8);
    assertEquals(
        "What one more day takes off one of the shop’s own (beef) cannot be told yet: it takes 8"
            + " bodies, weighed again, and 3 different numbers of days.",
        may().get(1));
  }

  @Test
  void isLeftOutWhereNothingHung() {
    shop.beef("B1", "2026-05-04", "c-ann").hung("B1", "2026-05-04", "250", "245");
    assertEquals(List.of(), may());
  }
}
