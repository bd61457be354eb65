package gambrel.trade.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which rail weights make hot, cold, aged and the weight into the boning room. */
class RailTest extends FiguresTest {

  private Rail rail(String weighings) {
    scene.weigh(weighings);
    return balance().rail();
  }

  @Test
  void twoSidesAddUp() {
    var rail =
        rail(
            """
            02T10:00 B1 hot  side 150
            02T10:01 B1 hot  side 148
            03T10:00 B1 cold side 147
            03T10:01 B1 cold side 145
            """);
    assertEquals(known("298"), rail.hot().weight());
    assertEquals(known("292"), rail.cold().weight());
    assertTrue(rail.sameParts());
    assertEquals(known("292"), rail.boning().weight());
  }

  @Test
  void aWholeBodyWeighedAsAWholeAndBySidesIsTheSameParts() {
    var rail =
        rail(
            """
            02T10:00 B1 hot  carcase 300
            03T10:00 B1 cold side    147 pieces=2
            """);
    assertTrue(rail.sameParts());
    assertEquals(known("147"), rail.cold().weight());
  }

  @Test
  void oneSideIsNotTheSamePartsAsTheWhole() {
    var rail = rail("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold side 147");
    assertFalse(rail.sameParts());
  }

  @Test
  void agedPartsReplaceTheirColdWeights() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side  147
            03T10:01 B1 cold right-side 145
            09T10:00 B1 aged left-side  141
            """);
    assertEquals(known("286"), rail.boning().weight());
    assertEquals(Optional.of(new Rail.Ageing(kg("147"), kg("141"))), rail.ageing());
    assertEquals(known("141"), rail.aged().weight());
  }

  @Test
  void bothAgedSidesAddUpInTheAgeingShrink() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side  147
            03T10:01 B1 cold right-side 145
            09T10:00 B1 aged left-side  141
            09T10:01 B1 aged right-side 140
            """);
    assertEquals(Optional.of(new Rail.Ageing(kg("292"), kg("281"))), rail.ageing());
    assertEquals(known("281"), rail.boning().weight());
  }

  @Test
  void agedPartsThatDoNotCoverTheirColdPartDoNotReplaceIt() {
    var rail =
        rail(
            """
            03T10:00 B1 cold carcase     290
            09T10:00 B1 aged left-side   141
            """);
    assertEquals(known("290"), rail.boning().weight());
    assertEquals(Optional.empty(), rail.ageing());
  }

  @Test
  void ofSeveralAgedDaysTheLatestStands() {
    var rail =
        rail(
            """
            03T10:00 B1 cold carcase 290
            09T10:00 B1 aged carcase 284
            12T10:00 B1 aged carcase 280
            """);
    assertEquals(known("280"), rail.boning().weight());
  }

  @Test
  void withoutRailWeightsTheTopmostBlocksMakeTheWeight() {
    scene.weigh(
        """
        05T10:00 B1 block hindquarter 140
        05T10:10 B1 block butt         60
        05T10:20 B1 block forequarter 120
        05T11:00 B1 pack  rump        200
        """);
    assertTrue(balance().fromBlock());
    assertEquals(known("260"), figures().weights().boning());
    assertEquals(2, balance().topmostBlocks().size());
    assertTrue(balance().rail().isEmpty());
  }

  @Test
  void withRailWeightsTheBlocksDoNotMakeTheWeight() {
    scene.simpleBody().weigh("05T09:00 B1 block hindquarter 140");
    assertFalse(balance().fromBlock());
    assertEquals(known("294"), figures().weights().boning());
  }
}
