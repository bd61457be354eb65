package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.Products;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.value.MarginalValue;
import gambrel.scenes.Scene;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.WeightUnit;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CutValuesTest {
  @TempDir Path folder;

  private Scene scene;

  @BeforeEach
  void sixSteersOnTheRail() {
    scene =
        Books.shop(folder)
            .file(
                "values.csv",
                "item,value,from,to",
                "short-loin,30,,",
                "tenderloin,50,,",
                "striploin,40,,",
                "stewing-dice,16,,",
                "mince,12,,",
                "bone,0.5,,");
    for (int i = 1; i <= 6; i++) {
      scene.body("B" + i + ",beef,steer,2026-03-02,ann");
      scene.weigh(
          "02T10:0%d B%d hot carcase 102\n03T10:0%d B%d cold carcase 100".formatted(i, i, i, i));
    }
  }

  /** T-bone 5 kg at 30 is 150; fillet 1 kg at 50 and striploin 3 kg at 40 are 170, of 100 kg. */
  @Test
  void loinOnTheBoneAndOffItIsToldForEachKiloOfTheBody() {
    for (int i = 1; i <= 6; i++) {
      scene.weigh(
          i <= 3
              ? "05T10:00 B%d pack t-bone 5\n05T10:01 B%d pack mince 94".formatted(i, i)
              : "05T10:00 B%d pack tenderloin 1\n05T10:01 B%d pack striploin-steak 3\n05T10:02 B%d pack mince 95"
                  .formatted(i, i, i));
    }
    var choice = choices().get(0);
    assertEquals("short-loin", choice.piece().id());
    assertEquals(List.of("tenderloin", "striploin"), ids(choice.ways().get(0)));
    assertEquals(BigFraction.of(170, 100), choice.ways().get(0).value());
    assertEquals(List.of("t-bone"), ids(choice.ways().get(1)));
    assertEquals(BigFraction.of(150, 100), choice.ways().get(1).value());
    assertTrue(choice.ways().get(1).toBest().isEmpty(), "three bodies tell nothing of chance");
  }

  /** Roast or steak of a striploin: what is left of the piece is in nobody's figure. */
  @Test
  void cutsThatDifferInTrimAloneAreNotComparedWithoutThePiecesWeight() {
    for (int i = 1; i <= 6; i++) {
      scene.weigh(
          "05T10:00 B%d pack striploin%s 4\n05T10:01 B%d pack mince 94"
              .formatted(i, i <= 3 ? "-roast" : "-steak", i));
    }
    assertEquals(List.of(), choices());
  }

  /**
   * 4 kg of striploin on the block: 3 kg of steak at 40, or 2 at 40 and 1 of trim at mince's 12.
   */
  @Test
  void pieceWeighedOnTheBlockIsToldByItsOwnWeight() {
    scene.file(
        "cuts.csv", "species,item,parent,name,kind", "beef,loin-trim,striploin,Loin trim,trim");
    scene.add("values.csv", "loin-trim,12,,");
    for (int i = 1; i <= 6; i++) {
      scene.weigh("05T09:00 B%d block striploin 4\n05T10:01 B%d pack mince 94".formatted(i, i));
      scene.weigh(
          i <= 3
              ? "05T10:00 B%d pack striploin-steak 3".formatted(i)
              : "05T10:00 B%d pack striploin-roast 2\n05T10:02 B%d pack loin-trim 1"
                  .formatted(i, i));
    }
    var choice = choices().get(0);
    assertTrue(choice.perPiece());
    assertEquals(BigFraction.of(120, 4), choice.ways().get(0).value());
    assertEquals(BigFraction.of(92, 4), choice.ways().get(1).value());
  }

  @Test
  void cutsWithoutAValueAreNamedAndNotGuessed() {
    for (int i = 1; i <= 6; i++) {
      scene.weigh(
          "05T10:00 B%d pack %s 5\n05T10:01 B%d pack rump-steak 94"
              .formatted(i, i <= 3 ? "rib-eye-bone-in" : "cube-roll", i));
    }
    assertEquals(List.of(), choices());
    var records = Books.march(scene);
    assertEquals(
        List.of("rib-eye-bone-in", "rump-steak", "cube-roll"),
        Products.unvalued(records.bodies().cut(), records.values()).stream()
            .map(Item::id)
            .toList());
  }

  /** Short loin 30 over mince 12; its T-bone has the loin's value. Dice is 16. */
  @Test
  void littleMoreOnACutIsWorthTheDifferenceOfValues() {
    scene.weigh(
        """
        05T10:00 B1 pack t-bone 5
        05T10:01 B1 pack stewing-dice 4
        05T10:02 B1 pack mince 89
        """);
    var records = Books.march(scene);
    var lines = MarginalValue.of(records.bodies().cut(), records.values());
    assertEquals(
        List.of("short-loin", "stewing-dice"), lines.stream().map(l -> l.cut().id()).toList());
    assertEquals("mince", lines.get(0).instead().id());
    assertEquals(BigFraction.of(18), lines.get(0).over());
    assertEquals(BigFraction.of(4), lines.get(1).over());
  }

  /** A tenth of 18 for each 100 g; the cut packed most comes first. */
  @Test
  void aHundredGramsMoreEarnATenthOfTheDifference() {
    scene.weigh(
        """
        05T10:00 B1 pack t-bone 5
        05T10:01 B1 pack stewing-dice 6
        05T10:02 B1 pack mince 87
        """);
    var records = Books.march(scene);
    var figures =
        MarginalValue.figures(
            MarginalValue.of(records.bodies().cut(), records.values()), WeightUnit.KG);
    assertEquals(
        List.of("stewing-dice as mince", "short-loin as mince"),
        figures.stream().map(figure -> figure.group().id()).toList());
    assertEquals(BigFraction.of(18, 10), figures.get(1).value().orElseThrow());
  }

  private List<CutChoice> choices() {
    var records = Books.march(scene);
    return CutChoice.of(records.bodies().settled(), records.values());
  }

  private static List<String> ids(CutChoice.Way way) {
    return way.items().stream().map(Item::id).toList();
  }
}
