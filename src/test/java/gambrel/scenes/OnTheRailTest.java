package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Hot and cold weights: which weighings stand, and what they cover. */
class OnTheRailTest extends SceneTest {

  @Test
  void twoSidesKeyedAlikeAddUp() {
    scene.weigh(
        """
        02T10:00 B1 hot  side 150
        02T10:05 B1 hot  side 151
        03T10:00 B1 cold side 147
        03T10:05 B1 cold side 148
        """);
    var found = scene.at(LATER);
    assertBody(found, "hot_kg", "301.000");
    assertBody(found, "cold_kg", "295.000");
    assertBody(found, "boning_kg", "295.000");
    // (301 - 295) / 301
    assertBody(found, "chill_shrink_pct", "1.993");
    assertBody(found, "dressing_pct", "53.750");
  }

  @Test
  void aThirdSideIsSetAsideAndHoldsTheBody() {
    scene.simpleBody();
    scene.weigh(
        """
        02T11:00 B1 hot side 150 ticket=71
        02T11:05 B1 hot side 151 ticket=72
        02T11:10 B1 hot side 152 ticket=73
        """);
    var found = scene.at(LATER);
    assertEquals("held row-set-aside", found.state("B1"));
    assertEquals("9 = 8 + 0 + 0 + 1", found.counts());
    assertEquals("73", found.notice("part-twice", "ticket"));
    assertEquals(1, found.exit());
  }

  @Test
  void twoSidesKeyedAsCarcasesAreToldWhichItemTheirCodeNeeds() {
    scene.weigh("02T10:00 B1 hot carcase 150\n02T10:05 B1 hot carcase 151\n");
    String advice = scene.at(LATER).notice("part-twice", "advice");
    assertEquals(
        "If these are parts of it, give their code the item of such a part in codes.csv (side,"
            + " left-side, right-side); if it was weighed again, void the weighing that does not count in"
            + " corrections.csv; if it is another body's, correct body.",
        advice);
  }

  /** One code of the scale may stand for half a beef and for a whole lamb. */
  @Test
  void aWholeBodyKeyedAsOneSideHasTheWeightsOfThatSide() {
    scene.weigh("02T10:00 B1 hot side 30\n03T10:00 B1 cold side 29.4\n");
    var found = scene.at(LATER);
    assertBody(found, "hot_kg", "30.000");
    assertBody(found, "boning_kg", "29.400");
    // (30 - 29.4) / 30
    assertBody(found, "chill_shrink_pct", "2.000");
  }

  @Test
  void twoQuartersKeyedAlikeAreBothCountedAndAThirdIsNot() {
    scene.weigh(
        """
        02T10:00 B1 hot hindquarter 70
        02T10:01 B1 hot hindquarter 71
        02T10:02 B1 hot hindquarter 72
        02T10:03 B1 hot forequarter 80
        02T10:04 B1 hot forequarter 81
        """);
    var found = scene.at(LATER);
    assertBody(found, "hot_kg", "302.000");
    assertEquals("5 = 4 + 0 + 0 + 1", found.counts());
  }

  @Test
  void aReweighCountsOnceTheFirstWeighingIsVoided() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 310 ticket=7
        02T10:05 B1 hot  carcase 300 ticket=8
        """);
    assertBody(scene.at(LATER), "hot_kg", "310.000");
    scene.correct("rail", "7", "status", "void", "02T12:00");
    assertBody(scene.at(LATER), "hot_kg", "300.000");
  }

  @Test
  void quartersReplaceTheirSidesOnlyWhenAllOfThemAreThere() {
    scene.weigh(
        """
        03T10:00 B1 cold side        147
        03T10:05 B1 cold side        148
        03T11:00 B1 cold forequarter  80
        03T11:05 B1 cold forequarter  81
        03T11:10 B1 cold hindquarter  65
        """);
    assertBody(scene.at(LATER), "cold_kg", "295.000");
    scene.weigh("03T11:15 B1 cold hindquarter 66");
    assertBody(scene.at(LATER), "cold_kg", "292.000");
    assertBody(scene.at(LATER), "boning_kg", "292.000");
  }

  @Test
  void theQuartersOfOneSideReplaceItWhereTheSidesAreKeyedLeftAndRight() {
    scene.weigh(
        """
        03T10:00 B1 cold left-side        147
        03T10:05 B1 cold right-side       148
        03T11:00 B1 cold left-forequarter  80
        03T11:10 B1 cold left-hindquarter  66
        """);
    assertBody(scene.at(LATER), "cold_kg", "294.000");
  }

  @Test
  void hotSidesAndColdQuartersCoverTheSameParts() {
    scene.weigh(
        """
        02T10:00 B1 hot  left-side   150
        02T10:05 B1 hot  right-side  150
        03T10:00 B1 cold forequarter  80
        03T10:05 B1 cold forequarter  80
        03T10:10 B1 cold hindquarter  67
        03T10:15 B1 cold hindquarter  67
        """);
    assertBody(scene.at(LATER), "chill_shrink_pct", "2.000");
  }

  @Test
  void aSideThatWasNotWeighedColdLeavesChillShrinkBlankAndHolds() {
    scene.weigh(
        """
        02T10:00 B1 hot  side 150
        02T10:05 B1 hot  side 150
        03T10:00 B1 cold side 147
        05T10:00 B1 pack rump 147
        """);
    var found = scene.at(LATER);
    assertBody(found, "chill_shrink_pct", "");
    assertEquals("held parts-missing", found.state("B1"));
  }

  @Test
  void aLeftSideIsNotARightSide() {
    scene.weigh(
        """
        02T10:00 B1 hot  left-side  150
        03T10:00 B1 cold right-side 147
        05T10:00 B1 pack rump       147
        """);
    var found = scene.at(LATER);
    assertBody(found, "chill_shrink_pct", "");
    assertEquals("held parts-missing", found.state("B1"));
  }

  @Test
  void aMobAddsUpToItsHead() {
    scene.body("M1,lamb,2026-03-02,ann,,3");
    scene.weigh(
        """
        02T10:00 M1 hot  carcase 20
        02T10:01 M1 hot  carcase 21
        02T10:02 M1 hot  carcase 22
        02T10:03 M1 hot  carcase 23
        03T10:00 M1 cold carcase 61.5 pieces=3
        """);
    var found = scene.at(LATER);
    assertEquals("63.000", found.body("M1", "hot_kg"));
    assertEquals("5 = 4 + 0 + 0 + 1", found.counts());
    // Three at once cover what three rows cover: (63 - 61.5) / 63
    assertEquals("2.381", found.body("M1", "chill_shrink_pct"));
  }

  @Test
  void aMissingColdWeightHolds() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        05T10:00 B1 pack rump    290
        """);
    var found = scene.at(LATER);
    assertEquals("held rail-missing", found.state("B1"));
    assertBody(found, "boning_kg", "");
    assertBody(found, "cutting_loss_kg", "");
    assertBody(found, "take_home_kg", "290.000");
  }

  @Test
  void aShopThatTakesNoColdWeightBonesFromTheHotOne() {
    scene.set("rail=hot");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 pack rump    295
        """);
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertBody(found, "boning_kg", "300.000");
    assertBody(found, "cutting_loss_kg", "5.000");
    assertBody(found, "chill_shrink_pct", "");
  }

  @Test
  void aSpeciesMayHaveItsOwnRailWeights() {
    scene.set("rail.lamb=cold").body("L1,lamb,2026-03-02,ann");
    scene.weigh(
        """
        03T10:00 L1 cold carcase 20
        05T10:00 L1 pack leg     20
        """);
    var found = scene.at(LATER);
    assertEquals("issued", found.state("L1"));
    assertEquals("20.000", found.body("L1", "boning_kg"));
    assertEquals("", found.body("L1", "hot_kg"));
  }

  @Test
  void aBodyThatNeverHungIsWeighedOnTheBlock() {
    scene.weigh(
        """
        05T09:00 B1 block forequarter 150
        05T09:05 B1 block hindquarter 140
        05T09:10 B1 block rump         20
        05T10:00 B1 pack  rump         20
        05T10:05 B1 pack  mince       268
        """);
    var found = scene.at(LATER);
    // The rump came out of the hindquarter that was weighed before it.
    assertBody(found, "boning_kg", "290.000");
    assertBody(found, "cutting_loss_kg", "2.000");
    assertEquals("issued", found.state("B1"));
    assertEquals(List.of("note weighed-on-block"), found.notices());
  }

  @Test
  void chillingIsTimedFromTheLastHotToTheLastColdWeighing() {
    scene.weigh(
        """
        02T10:00 B1 hot  side 150
        02T10:20 B1 hot  side 150
        03T10:00 B1 cold side 147
        03T10:30 B1 cold side 147
        """);
    // 24 h 10 min
    assertBody(scene.at(LATER), "hours_chilled", "24.167");
  }

  @Test
  void nothingIsKnownOfTakeHomeBeforeTheFirstEndProduct() {
    scene.weigh(
        """
        02T10:00 B1 hot   carcase 300
        03T10:00 B1 cold  carcase 294
        05T10:00 B1 block rump     20
        """);
    var found = scene.at(LATER);
    for (String column :
        List.of(
            "take_home_kg",
            "meat_home_kg",
            "offal_kg",
            "tub_kg",
            "bone_kg",
            "fat_kg",
            "waste_kg",
            "rail_trim_kg",
            "cutting_loss_kg",
            "unweighed_kg",
            "balance_u_kg",
            "batch_loss_kg")) {
      assertBody(found, column, "");
    }
    assertEquals("open", found.state("B1"));
    assertBody(found, "days_hung", "3");
  }

  @Test
  void aMobWeighedInPartHasPartsMissing() {
    scene.body("M1,lamb,2026-03-02,ann,,3");
    scene.weigh(
        """
        02T10:00 M1 hot  carcase 63 pieces=3
        03T10:00 M1 cold carcase 41 pieces=2
        05T10:00 M1 pack leg     41
        """);
    var found = scene.at(LATER);
    assertEquals("held parts-missing", found.state("M1"));
    assertEquals("", found.body("M1", "chill_shrink_pct"));
  }

  @Test
  void aSideAndTheQuartersOfTheOtherCoverTheBody() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase     300
        03T10:00 B1 cold side        147
        03T10:05 B1 cold forequarter  80
        03T10:10 B1 cold hindquarter  67
        """);
    var found = scene.at(LATER);
    assertBody(found, "cold_kg", "294.000");
    assertBody(found, "chill_shrink_pct", "2.000");
  }

  @Test
  void leftAndRightSidesMayBeWeighedAsSidesLater() {
    scene.weigh(
        """
        02T10:00 B1 hot  left-side  150
        02T10:05 B1 hot  right-side 150
        03T10:00 B1 cold side       147
        03T10:05 B1 cold side       147
        """);
    assertBody(scene.at(LATER), "chill_shrink_pct", "2.000");
  }

  @Test
  void aShopWithoutARailWeighsOnTheBlockAndMissesNothing() {
    scene.set("rail=");
    scene.weigh(
        """
        05T09:00 B1 block side 147
        05T09:05 B1 block side 147
        05T10:00 B1 pack  rump 293
        """);
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertBody(found, "boning_kg", "294.000");
    assertBody(found, "cutting_loss_kg", "1.000");
  }

  @Test
  void quartersOfOneSideBesideBothSidesHoldTheBodyAndTheSidesStand() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase     200
        03T10:00 B1 cold side         98
        03T10:05 B1 cold side         98
        03T11:00 B1 cold forequarter  50 ticket=71
        03T11:05 B1 cold hindquarter  47 ticket=72
        05T10:00 B1 pack rump        196
        """);
    var found = scene.at(LATER);
    assertBody(found, "cold_kg", "196.000");
    assertBody(found, "boning_kg", "196.000");
    assertBody(found, "chill_shrink_pct", "2.000");
    assertEquals("held rail-twice", found.state("B1"));
    assertEquals("6 = 6 + 0 + 0 + 0", found.counts());
    assertEquals(
        List.of("71", "72"),
        found.rows("notices", "code=rail-twice").stream().map(n -> n.get("ticket")).toList());
    scene.release("B1", "release", "07");
    assertEquals("issued", scene.at(LATER).state("B1"));
    assertEquals("mark", scene.at(LATER).rows("notices", "code=rail-twice").get(0).get("severity"));
  }

  @Test
  void aLoneQuarterOnABodyWeighedWholeHoldsIt() {
    scene.simpleBody().weigh("03T10:30 B1 cold forequarter 80 ticket=71");
    var found = scene.at(LATER);
    assertBody(found, "cold_kg", "294.000");
    assertEquals("held rail-twice", found.state("B1"));
    scene.correct("rail", "71", "status", "void", "06");
    assertEquals("issued", scene.at(LATER).state("B1"));
  }

  @Test
  void aReleaseFromOneWeighingTooManyDoesNotCoverTheNext() {
    scene.simpleBody().weigh("03T10:30 B1 cold forequarter 80 ticket=71");
    scene.release("B1", "release", "07").weigh("08T10:00 B1 cold hindquarter 67 ticket=72");
    assertEquals("issued", scene.at("08T09:00").state("B1"));
    assertEquals("held rail-twice", scene.at(LATER).state("B1"));
  }

  @Test
  void threeQuartersDoNotReplaceTheOneSideThatWasWeighed() {
    scene.weigh(
        """
        03T10:00 B1 cold side        147
        03T11:00 B1 cold forequarter  80
        03T11:01 B1 cold forequarter  80
        03T11:02 B1 cold hindquarter  66
        """);
    assertBody(scene.at(LATER), "cold_kg", "147.000");
    // All four are the body.
    scene.weigh("03T11:03 B1 cold hindquarter 66");
    assertBody(scene.at(LATER), "cold_kg", "292.000");
  }
}
