package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.tables.NightTables;
import gambrel.insight.month.figures.MonthBody;
import gambrel.pages.views.PrintedRows;
import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cut is one row: here rump skewers, a made-up cut, 4 kg of them packed beside 72 kg. */
class NewCutTest {
  private static final Item SKEWERS =
      new Item(
          "rump-skewer",
          "rump",
          "Rump skewers",
          Kind.MEAT,
          1,
          List.of(),
          false,
          new Facts(
              Optional.of("chops"),
              Optional.of(true),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));

  @TempDir private Path folder;
  private FarmShop shop;

  @BeforeEach
  void skewersArePacked() {
    shop =
        new FarmShop(folder)
            .steer()
            .row("05T09:06", "B1", "skewer", "4.00")
            .changed(NewCutTest::grown);
  }

  private static Shop grown(Shop shop) {
    var codes = new ArrayList<>(shop.codes());
    codes.add(
        new ScaleCode(
            "skewer", List.of(SKEWERS.id()), Step.PACK, "", Weight.ZERO, false, Optional.empty()));
    return new Shop(
        shop.settings(),
        shop.cuts().with(shop.cuts().of(Species.BEEF).extend(List.of(SKEWERS)).tree()),
        shop.ranges(),
        shop.foods(),
        shop.customers(),
        shop.bodies(),
        codes,
        shop.scales(),
        shop.bench(),
        shop.charges(),
        shop.values(),
        shop.batches(),
        shop.payments(),
        shop.corrections(),
        shop.releases(),
        shop.unread());
  }

  @Test
  void theListOfTheBoxesAndItsTotal() {
    var boxes = shop.statement("B1", "c-ann").boxes().orElseThrow();
    var row =
        PrintedRows.of(boxes).stream()
            .filter(r -> r.name().equals("Rump skewers"))
            .findFirst()
            .orElseThrow();
    assertEquals("4.00", row.weight());
    assertEquals("80.00", boxes.total().orElseThrow().weight());
  }

  @Test
  void theAdviceOnKeeping() {
    var rows = shop.statement("B1", "c-ann").keeping().orElseThrow().rows();
    assertTrue(
        rows.stream().anyMatch(row -> row.get(0).equals("Chops") && row.get(1).equals("3–5 days")));
  }

  @Test
  void theTableOfCutsWithTheTotalsOfThePartsAbove() {
    var cuts =
        NightTables.of(shop.night()).stream()
            .filter(table -> table.name().equals("cuts.csv"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        cuts.rows()
            .anyMatch(
                row ->
                    row.subList(0, 7)
                        .equals(
                            List.of("B1", "rump-skewer", "rump", "meat", "pack", "own", "4.000"))));
    assertEquals(
        List.of("14.000"),
        cuts.rows()
            .filter(row -> row.get(1).equals("rump") && row.get(5).equals("total"))
            .map(row -> row.get(6))
            .toList());
  }

  @Test
  void theMonthsWayOfCutting() {
    assertEquals("rump-skewer", MonthBody.of(shop.night().bodies().get("B1")).style());
  }
}
