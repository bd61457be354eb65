package gambrel.pages.owner;

import static gambrel.pages.owner.SmallShop.column;
import static gambrel.pages.owner.SmallShop.remarks;
import static gambrel.pages.owner.SmallShop.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.SummaryView;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bodies of 100 kg cold, of which 78 kg of mince go home, at 10 a kilo: 780. */
class StockChapterTest {
  @TempDir private Path folder;
  private SmallShop shop;

  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
    shop.instead("bodies.csv", "body,species,class,killed,customer,supplier,cost");
    shop.add("values.csv", "item,value,from,to\nmince,10,,");
  }

  private void body(String id, String killed, String customer, String supplier, String cost) {
    shop.add("bodies.csv", String.join(",", id, "beef", "steer", killed, customer, supplier, cost));
    shop.hung(id, killed, "102", "100");
    shop.cut(id, killed.substring(0, 8) + "20", "78", "21");
  }

  private SummaryView july() {
    return shop.summary("2026-07", "2026-09-15T02:00:00Z");
  }

  @Test
  void listsOwnBodiesOfKnownCostWithLeastLeftOverFirst() {
    body("B1", "2026-07-06", "", "Hill", "700");
    body("B2", "2026-07-06", "", "Vale", "800");
    body("B3", "2026-07-06", "c-ann", "", "");
    body("B4", "2026-07-06", "", "Vale", "");
    assertEquals(
        List.of(
            List.of("B2", "beef, steer", "Vale", "78.0", "800.00", "780.00", "\u221220.00"),
            List.of("B1", "beef, steer", "Hill", "78.0", "700.00", "780.00", "80.00")),
        rows(july(), "stock"));
  }

  /** Hill's two left 80 and 30 on 200 kg: 0.55 a kilo; one of them is of June. */
  @Test
  void addsUpASuppliersBodiesOfTheMonthAndTheTwelveBefore() {
    body("A1", "2026-06-08", "", "Hill", "750");
    body("B1", "2026-07-06", "", "Hill", "700");
    assertEquals(
        List.of(List.of("Hill, beef", "2", "78.0", "1,450.00", "1,560.00", "110.00", "0.55")),
        rows(july(), "suppliers"));
  }

  @Test
  void namesNoSupplierAsSuch() {
    body("B1", "2026-07-06", "", "", "700");
    assertEquals("no supplier, beef", column(july(), "suppliers", 0).get(0));
  }

  @Test
  void asksForCostWhereNoneIsKnown() {
    body("B1", "2026-07-06", "", "Hill", "");
    assertEquals(
        List.of("To see what own bodies leave over, enter their cost and supplier in bodies.csv."),
        remarks(july(), "What the shop bought"));
  }

  @Test
  void isNotThereForAShopThatBuysNothing() {
    body("B1", "2026-07-06", "c-ann", "", "");
    assertEquals(List.of(), rows(july(), "stock"));
    assertEquals(List.of(), remarks(july(), "What the shop bought"));
  }

  @Test
  void listsAllBodies() {
    for (int i = 0; i < 13; i++) {
      body("B" + (10 + i), "2026-07-06", "", "Hill", "700");
    }
    assertEquals(13, rows(july(), "stock").size());
  }
}
