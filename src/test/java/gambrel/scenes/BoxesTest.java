package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code cuts.csv} and {@code pieces.csv}: item by item, and every piece weighed on the block. */
class BoxesTest extends SceneTest {

  @Test
  void anItemIsListedAtEveryStepAndAsTheTotalOfAllUnderIt() {
    scene.weigh(
        """
        03T10:00 B1 cold  carcase     200
        05T09:00 B1 block rump         20
        05T10:00 B1 pack  rump-steak    6 pieces=8
        05T10:01 B1 pack  rump-steak    5 pieces=7
        05T10:02 B1 pack  rump          4
        05T10:03 B1 bin   rump          1
        """);
    var found = scene.at(LATER);
    assertCut(found, "rump-steak own pack", "11.000 2 15 5.500");
    assertCut(found, "rump-steak total ", "11.000 2 15 5.500");
    assertCut(found, "rump own block", "20.000 0  10.000");
    assertCut(found, "rump own pack", "4.000 1  2.000");
    assertCut(found, "rump own bin", "1.000 0  0.500");
    // 11 + 4 + 1
    assertCut(found, "rump total ", "16.000 3 15 8.000");
    assertCut(found, "hindquarter total ", "16.000 3 15 8.000");
    assertCut(found, "carcase own cold", "200.000 0  100.000");
  }

  private static void assertCut(Found found, String cut, String expected) {
    var words = cut.split(" ", -1);
    var row =
        found.rows("cuts", "item=" + words[0], "level=" + words[1], "step=" + words[2]).get(0);
    assertEquals(
        expected,
        String.join(
            " ",
            row.get("weight_kg"),
            row.get("packs"),
            row.get("pieces"),
            row.get("of_boning_pct")));
  }

  @Test
  void totalsHoldOffalAndRailTrimToo() {
    scene.weigh("02T12:00 B1 bin fat 2\n02T12:05 B1 pack liver 6").simpleBody();
    assertEquals(
        "302.000", scene.at(LATER).cell("cuts", "weight_kg", "item=carcase", "level=total"));
  }

  @Test
  void aTubWithoutABatchIsListedAndNotTotalled() {
    scene.simpleBody().weigh("05T09:00 B1 tub trim 80");
    var found = scene.at(LATER);
    assertEquals("80.000", found.cell("cuts", "weight_kg", "item=trim", "step=tub"));
    assertEquals(List.of(), found.rows("cuts", "item=trim", "level=total"));
  }

  @Test
  void onlyStandingRailWeightsAreListed() {
    scene.weigh(
        """
        10T10:00 B1 aged carcase 290
        20T10:00 B1 aged carcase 285
        """);
    assertEquals("285.000", scene.at(LATER).cell("cuts", "weight_kg", "step=aged"));
  }

  @Test
  void cutsComeInTreeOrder() {
    scene.weigh(
        """
        05T10:00 B1 pack liver  6
        05T10:01 B1 pack mince  5
        05T10:02 B1 pack chuck  4
        05T10:03 B1 pack rump   3
        """);
    assertEquals(
        List.of("rump", "chuck", "mince", "liver"),
        scene.at(LATER).rows("cuts", "level=own").stream().map(row -> row.get("item")).toList());
  }

  @Test
  void everyPieceWeighedOnTheBlockIsBalancedAgainstWhatCameOfIt() {
    scene.weigh(
        """
        05T09:00 B1 block hindquarter 100
        05T09:30 B1 block rump         20
        05T10:00 B1 pack  rump-steak   15
        05T10:05 B1 bin   rump          4
        05T10:10 B1 pack  topside      79
        """);
    var found = scene.at(LATER);
    assertPiece(found, "hindquarter", "100.000 98.000 2.000");
    assertPiece(found, "rump", "20.000 19.000 1.000");
  }

  private static void assertPiece(Found found, String item, String expected) {
    var row = found.rows("pieces", "item=" + item).get(0);
    assertEquals(
        expected, row.get("block_kg") + ' ' + row.get("out_kg") + ' ' + row.get("loss_kg"));
  }

  @Test
  void twoPiecesAlikeAreOneLine() {
    scene.weigh(
        """
        05T09:30 B1 block rump       10
        05T09:31 B1 block rump       11
        05T10:00 B1 pack  rump-steak 20
        """);
    assertPiece(scene.at(LATER), "rump", "21.000 20.000 1.000");
  }

  @Test
  void theUncertaintyOfAPieceIsThatOfItsOwnWeighings() {
    scene.file("scales.csv", "scale,division,class", "rail,0.3,", "bench,0.3,");
    scene.weigh(
        """
        05T09:30 B1 block rump       20
        05T10:00 B1 pack  rump-steak 15
        05T10:05 B1 bin   rump        4
        """);
    assertEquals("0.300", scene.at(LATER).cell("pieces", "balance_u_kg"));
  }

  @Test
  void whatCameOfAPieceIsNotKnownWhereEndProductsLieOutsideThePieces() {
    // The mince may be of the rump or not.
    scene.weigh(
        """
        03T10:00 B1 cold  carcase    294
        05T09:30 B1 block rump        20
        05T10:00 B1 pack  rump-steak  15
        05T10:05 B1 pack  mince      250
        """);
    assertPiece(scene.at(LATER), "rump", "20.000  ");
  }
}
