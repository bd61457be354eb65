package gambrel.trade.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import gambrel.trade.weighing.Weighing;
import java.util.List;
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
    assertEquals(known("260"), balance().boning());
    assertEquals(2, balance().topmostBlocks().size());
    assertTrue(balance().rail().isEmpty());
  }

  @Test
  void withRailWeightsTheBlocksDoNotMakeTheWeight() {
    scene.simpleBody().weigh("05T09:00 B1 block hindquarter 140");
    assertFalse(balance().fromBlock());
    assertEquals(known("294"), balance().boning());
  }

  private String boning() {
    return balance().boning().orElseThrow().toString();
  }

  @Test
  void oneSideBesideTheWholeIsLeftOut() {
    assertEquals(
        known("300"), rail("02T10:00 B1 hot carcase 300\n02T10:01 B1 hot side 150").hot().weight());
  }

  @Test
  void bothSidesReplaceTheWhole() {
    var rail =
        rail(
            """
            02T10:00 B1 hot carcase 300
            02T10:01 B1 hot side    150
            02T10:02 B1 hot side    148
            """);
    assertEquals(known("298"), rail.hot().weight());
    assertEquals(2, rail.hot().weighings().size());
  }

  @Test
  void aSideAndAQuarterOfTheOtherSideAddUp() {
    assertEquals(
        known("220"),
        rail("03T10:00 B1 cold side 150\n03T10:01 B1 cold forequarter 70").cold().weight());
  }

  @Test
  void quartersOfOneSideReplaceIt() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side        150
            03T10:01 B1 cold left-forequarter  70
            03T10:02 B1 cold left-hindquarter  78
            03T10:03 B1 cold right-side       145
            """);
    assertEquals(known("293"), rail.cold().weight());
  }

  @Test
  void oneQuarterOfASideDoesNotReplaceIt() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side        150
            03T10:01 B1 cold left-forequarter  70
            03T10:02 B1 cold right-side       145
            """);
    assertEquals(known("295"), rail.cold().weight());
  }

  @Test
  void aMobHasItsPartsAsManyTimesAsItHasHead() {
    scene.file("bodies.csv", "body,species,killed,customer,head", "B1,beef,2026-03-02,ann,2");
    var rail =
        rail(
            """
            02T10:00 B1 hot  carcase 300
            02T10:01 B1 hot  carcase 290
            03T10:00 B1 cold side    144 pieces=4
            """);
    assertEquals(known("590"), rail.hot().weight());
    assertTrue(rail.sameParts());
  }

  @Test
  void threeSidesOfTwoHeadAreNotTheSamePartsAsTwoCarcases() {
    scene.file("bodies.csv", "body,species,killed,customer,head", "B1,beef,2026-03-02,ann,2");
    var rail =
        rail(
            """
            02T10:00 B1 hot  carcase 590 pieces=2
            03T10:00 B1 cold side    430 pieces=3
            """);
    assertFalse(rail.sameParts());
  }

  @Test
  void aWeighingTakesUpNoMoreOfAPartThanTheBodyHas() {
    var rail = rail("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold side 294 pieces=5");
    assertTrue(rail.sameParts());
    assertEquals(2, rail.cold().pieces().get(0).number());
    assertEquals("side", rail.cold().pieces().get(0).item());
    assertEquals(kg("294"), Weighing.total(rail.cold().pieces().get(0).weighings()));
  }

  @Test
  void quartersAndSidesCoverTheSameParts() {
    var rail =
        rail(
            """
            02T10:00 B1 hot  side        300 pieces=2
            03T10:00 B1 cold forequarter 140 pieces=2
            03T10:01 B1 cold hindquarter 150 pieces=2
            """);
    assertTrue(rail.sameParts());
  }

  @Test
  void theLeftSideIsNotTheSamePartAsTheRight() {
    assertFalse(rail("02T10:00 B1 hot left-side 150\n03T10:00 B1 cold right-side 147").sameParts());
  }

  @Test
  void leftCountsAsPlainWhereAnotherWeighingNamesNoSide() {
    assertTrue(rail("02T10:00 B1 hot left-side 150\n03T10:00 B1 cold side 147").sameParts());
  }

  @Test
  void anAgedSideReplacesItsColdQuarters() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-forequarter  70
            03T10:01 B1 cold left-hindquarter  75
            03T10:02 B1 cold right-side       145
            09T10:00 B1 aged left-side        140
            """);
    assertEquals("285.000", boning());
    assertEquals(Optional.of(new Rail.Ageing(kg("145"), kg("140"))), rail.ageing());
  }

  @Test
  void anAgedQuarterDoesNotReplaceItsColdSide() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side        147
            03T10:01 B1 cold right-side       145
            09T10:00 B1 aged left-hindquarter  70
            09T10:01 B1 aged right-side       140
            """);
    assertEquals("287.000", boning());
    assertEquals(Optional.empty(), rail.ageing());
  }

  @Test
  void bothAgedQuartersReplaceTheirColdSide() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side        147
            03T10:01 B1 cold right-side       145
            09T10:00 B1 aged left-hindquarter  70
            09T10:01 B1 aged left-forequarter  71
            """);
    assertEquals("286.000", boning());
    assertEquals(Optional.of(new Rail.Ageing(kg("147"), kg("141"))), rail.ageing());
  }

  @Test
  void eachPartsLatestAgedDayStands() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side  147
            03T10:01 B1 cold right-side 145
            09T10:00 B1 aged left-side  141
            09T10:01 B1 aged right-side 140
            12T10:00 B1 aged left-side  138
            """);
    assertEquals(known("278"), rail.aged().weight());
    assertEquals("278.000", boning());
  }

  @Test
  void allAgedWeighingsOfTheLatestDayStand() {
    var rail =
        rail(
            """
            03T10:00 B1 cold side 292 pieces=2
            08T10:00 B1 aged side 139
            09T10:00 B1 aged side 138
            09T10:01 B1 aged side 137
            """);
    assertEquals("275.000", boning());
    assertEquals(Optional.of(new Rail.Ageing(kg("292"), kg("275"))), rail.ageing());
  }

  @Test
  void anAgedPartWithoutAColdWeightHasNoAgeingShrink() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-side  147
            09T10:00 B1 aged left-side  141
            09T10:01 B1 aged right-side 140
            """);
    assertEquals("281.000", boning());
    assertEquals(Optional.empty(), rail.ageing());
  }

  @Test
  void withoutColdWeightsTheHotOnesStand() {
    scene.set("rail=hot");
    rail("02T10:00 B1 hot left-side 150\n02T10:01 B1 hot right-side 148");
    assertEquals("298.000", boning());
    scene.weigh("03T10:00 B1 cold left-side 147");
    assertEquals("295.000", boning());
  }

  @Test
  void whatWasAgedFromAHotWeightHasNoAgeingShrink() {
    scene.set("rail=hot");
    var rail = rail("02T10:00 B1 hot carcase 300\n09T10:00 B1 aged carcase 280");
    assertEquals("280.000", boning());
    assertEquals(Optional.empty(), rail.ageing());
  }

  @Test
  void whereTheShopTakesColdWeightsTheHotOneIsNoWeightIntoTheBoningRoom() {
    rail("02T10:00 B1 hot carcase 300\n05T10:00 B1 pack rump 10");
    assertEquals(Optional.empty(), balance().boning());
  }

  @Test
  void aRailWithAnyWeighingIsNotEmpty() {
    assertFalse(rail("02T10:00 B1 hot carcase 300").isEmpty());
    scene.body("B2,beef,2026-03-02,ann", "B3,beef,2026-03-02,ann", "B4,beef,2026-03-02,ann");
    scene.weigh("03T10:00 B2 cold carcase 300\n09T10:00 B3 aged carcase 300");
    var bodies = night().bodies();
    assertFalse(bodies.get("B2").balance().rail().isEmpty());
    assertFalse(bodies.get("B3").balance().rail().isEmpty());
    assertTrue(bodies.get("B4").balance().rail().isEmpty());
    assertFalse(bodies.get("B4").balance().fromBlock());
  }

  @Test
  void aStepHasItsFirstAndItsLastMoment() {
    var hot = rail("02T10:05 B1 hot side 148\n02T10:00 B1 hot side 150").hot();
    assertEquals("2026-03-02T10:00Z", hot.first().orElseThrow().toString());
    assertEquals("2026-03-02T10:05Z", hot.last().orElseThrow().toString());
    assertEquals("2026-03-02", hot.lastDate().orElseThrow().toString());
    assertEquals(Optional.empty(), RailWeights.NONE.weight());
    assertEquals(Optional.empty(), RailWeights.NONE.lastDate());
  }

  @Test
  void aPrimalThatHungByItselfCounts() {
    var rail = rail("03T10:00 B1 cold butt 60\n03T10:01 B1 cold butt 61");
    assertEquals(known("121"), rail.cold().weight());
    assertEquals("121.000", boning());
  }

  @Test
  void aLeftQuarterOnTheBlockIsAboveItsPrimals() {
    scene.weigh(
        """
        05T10:20 B1 block left-hindquarter 70
        05T10:10 B1 block butt             30
        05T10:00 B1 block forequarter      60
        """);
    assertEquals("130.000", boning());
    assertEquals(
        List.of("forequarter", "left-hindquarter"),
        balance().topmostBlocks().stream().map(w -> w.item()).toList());
  }

  @Test
  void leftAndPlainQuarterOnTheBlockAreTwoPieces() {
    scene.weigh("05T10:00 B1 block left-hindquarter 70\n05T10:10 B1 block hindquarter 71");
    assertEquals("141.000", boning());
  }

  @Test
  void partsAgedEachOnItsOwnAddUpInTheAgeingShrink() {
    var rail =
        rail(
            """
            03T10:00 B1 cold left-forequarter  70
            03T10:01 B1 cold left-hindquarter  75
            03T10:02 B1 cold right-forequarter 71
            03T10:03 B1 cold right-hindquarter 76
            09T10:00 B1 aged left-forequarter  66
            09T10:01 B1 aged right-forequarter 67
            """);
    assertEquals("284.000", boning());
    assertEquals(Optional.of(new Rail.Ageing(kg("141"), kg("133"))), rail.ageing());
  }

  @Test
  void aCarcaseIsTheSamePartsAsItsLeftAndItsRightSide() {
    var rail =
        rail(
            """
            02T10:00 B1 hot  carcase    300
            03T10:00 B1 cold left-side  147
            03T10:01 B1 cold right-side 147
            """);
    assertTrue(rail.sameParts());
  }

  @Test
  void aHotWeightThatNamesNoSideLeavesTheSidesOfColdAndAgedApart() {
    var rail =
        rail(
            """
            02T10:00 B1 hot  side       300 pieces=2
            03T10:00 B1 cold left-side  147
            03T10:01 B1 cold right-side 145
            09T10:00 B1 aged left-side  141
            """);
    assertEquals("286.000", boning());
    assertEquals(Optional.of(new Rail.Ageing(kg("147"), kg("141"))), rail.ageing());
  }

  @Test
  void whereHotWeightsStandTheirSidesAreComparedWithTheColdOnes() {
    scene.set("rail=hot");
    rail(
        """
        02T10:00 B1 hot  side      150
        02T10:01 B1 hot  side      148
        03T10:00 B1 cold left-side 147
        """);
    assertEquals("298.000", boning());
  }

  @Test
  void whatWasNotAgedHasNoAgeingShrink() {
    assertEquals(Optional.empty(), rail("03T10:00 B1 cold carcase 290").ageing());
  }

  @Test
  void aQuarterHangsWhateverKindTheShopGivesIt() {
    scene.file(
        "cuts.csv",
        "species,item,parent,name,kind,count",
        "beef,forequarter,side,Forequarter,piece,2");
    rail("03T10:00 B1 cold side 294 pieces=2\n09T10:00 B1 aged hindquarter 150 pieces=2");
    assertEquals("294.000", boning());
  }

  @Test
  void aPartOfTheShopsOwnThatHangsIsPartOfTheWhole() {
    scene.file(
        "cuts.csv", "species,item,parent,name,kind,count", "beef,pluck,carcase,Pluck,carcase,1");
    assertFalse(
        rail("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold side 294 pieces=2").sameParts());
  }

  @Test
  void aCutThatOnlyBeginsLikeASideIsItself() {
    scene.file("cuts.csv", "species,item,parent,name,kind", "beef,left-over,carcase,Rest,meat");
    var rail = rail("03T10:00 B1 cold side 147\n03T10:01 B1 cold left-over 10");
    assertEquals(known("157"), rail.cold().weight());
  }

  @Test
  void aLeftSideOnTheBlockIsAboveItsQuarters() {
    scene.weigh("05T10:00 B1 block left-side 150\n05T10:10 B1 block left-forequarter 70");
    assertEquals("150.000", boning());
  }
}
