package gambrel.pages.owner;

import static gambrel.pages.owner.SmallShop.remarks;
import static gambrel.pages.owner.SmallShop.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ValueChapterTest {
  private static final String VALUE = "What the cuts were worth";
  private static final String ADVICE = "What to leave on which cut; one more day";

  @TempDir private Path folder;
  private SmallShop shop;

  /** 78 of 100 kg and 150 of 200 kg are mince, and 40 of 50 kg the month before. */
  @BeforeEach
  void twoSteersAndOneBefore() {
    shop = new SmallShop(folder);
    shop.beef("A1", "2026-06-08", "c-ann").hung("A1", "2026-06-08", "51", "50");
    shop.cut("A1", "2026-06-12", "40", "9");
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "102", "100");
    shop.cut("B1", "2026-07-10", "78", "21");
    shop.beef("B2", "2026-07-06", "").hung("B2", "2026-07-06", "204", "200");
    shop.cut("B2", "2026-07-13", "150", "48");
  }

  private SmallShop values(String... rows) {
    return shop.add("values.csv", "item,value,from,to\n" + String.join("\n", rows));
  }

  private SummaryView july() {
    return shop.summary("2026-07", "2026-09-15T02:00:00Z");
  }

  /** At 10 a kilo 780 and 1500 on 100 and 200 kg, together 2280 on 300; before 400 on 50. */
  @Test
  void givesTheWorthOfTakeHomeOnTheColdWeight() {
    values("mince,10,,");
    assertEquals(
        List.of(List.of("Beef", "2", "7.60", "", "B2 7.50", "B1 7.80", "8.00")),
        rows(july(), "worth"));
  }

  @Test
  void hasAMiddleHalfFromFourBodiesOn() {
    values("mince,10,,");
    shop.beef("B3", "2026-07-06", "c-ann").hung("B3", "2026-07-06", "102", "100");
    shop.cut("B3", "2026-07-14", "78", "21");
    shop.beef("B4", "2026-07-06", "c-ann").hung("B4", "2026-07-06", "102", "100");
    shop.cut("B4", "2026-07-14", "78", "21");
    assertEquals("7.73–7.80", rows(july(), "worth").get(0).get(3));
  }

  @Test
  void takesTheValuesOfTheMonthsLastDay() {
    values("mince,10,,2026-07-30", "mince,20,2026-07-31,2026-07-31", "mince,30,2026-08-01,");
    assertEquals("15.20", rows(july(), "worth").get(0).get(2));
  }

  @Test
  void asksForValuesWhereThereAreNone() {
    assertEquals(List.of(), SmallShop.part(july(), VALUE).orElseThrow().tables());
    assertEquals(
        List.of(
            "To see what each way of cutting is worth, enter in values.csv what you sell a cut"
                + " for."),
        remarks(july(), VALUE));
  }

  /** 10 of 99 kg have no value: more than a tenth. */
  @Test
  void namesWhatHasNoValueAndLeavesOutABodyThatHasTooMuchOfIt() {
    values("mince,10,,");
    shop.add("codes.csv", "rump,rump-steak,pack");
    shop.beef("B3", "2026-07-06", "c-ann").hung("B3", "2026-07-06", "102", "100");
    shop.cut("B3", "2026-07-14", "88", "1").row("bench", "2026-07-14T10:00", "B3", "rump", "10");
    assertEquals("2", rows(july(), "worth").get(0).get(1));
    var remarks = remarks(july(), VALUE);
    assertEquals("No value in values.csv for: Rump steak.", remarks.get(remarks.size() - 1));
  }

  /** A kilo of T-bone at 30 less mince at 10 is 20: 2.00 for 100 g. */
  @Test
  void tellsALittleMoreOnACutByAHundredGrams() {
    tBone();
    assertEquals(
        "Each 100 g that stay on a cut and do not become mince ($10.00 a kg) earn so much more: short"
            + " loin $2.00.",
        remarks(july(), ADVICE).get(0));
  }

  /** Four ounces are a quarter of a pound. */
  @Test
  void orByFourOunces() {
    tBone();
    shop.instead(
        "shop.properties", "name=F\ncurrency=USD\nlocale=en-US\nunit=lb\nzone=UTC\npaper=letter");
    assertEquals(
        "Each 4 oz that stay on a cut and do not become ground beef ($10.00 a lb) earn so much more:"
            + " short loin $5.00.",
        remarks(july(), ADVICE).get(0));
  }

  private void tBone() {
    values("mince,10,,", "short-loin,30,,");
    shop.add("codes.csv", "t,t-bone,pack");
    shop.beef("B3", "2026-07-06", "c-ann").hung("B3", "2026-07-06", "102", "100");
    shop.cut("B3", "2026-07-14", "74", "20").row("bench", "2026-07-14T10:00", "B3", "t", "5");
  }
}
