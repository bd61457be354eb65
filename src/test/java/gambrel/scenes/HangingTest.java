package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Ageing on the rail, trim that comes off there, and how long a body hung. */
class HangingTest extends SceneTest {

  @Test
  void anAgedWeightIsTheWeightIntoTheBoningRoom() {
    scene.weigh(
        """
        03T10:00 B1 cold carcase 294
        20T10:00 B1 aged carcase 285
        """);
    var found = scene.at(LATER);
    assertBody(found, "boning_kg", "285.000");
    // 9 / 294
    assertBody(found, "ageing_shrink_pct", "3.061");
  }

  @Test
  void withoutAnAgedWeightThereIsNoAgeingShrink() {
    scene.weigh("03T10:00 B1 cold carcase 294");
    assertBody(scene.at(LATER), "ageing_shrink_pct", "");
  }

  @Test
  void ofSeveralDaysTheLatestStands() {
    scene.weigh(
        """
        03T10:00 B1 cold carcase 294
        10T10:00 B1 aged carcase 290
        20T10:00 B1 aged carcase 285
        """);
    var found = scene.at(LATER);
    assertBody(found, "boning_kg", "285.000");
    assertEquals("3 = 3 + 0 + 0 + 0", found.counts());
    assertBody(scene.at("15T00:00"), "boning_kg", "290.000");
  }

  @Test
  void theLatestDayIsSoughtForEachPartByItself() {
    scene.weigh(
        """
        03T10:00 B1 cold left-side  147
        03T10:05 B1 cold right-side 147
        10T10:00 B1 aged left-side  145
        10T10:05 B1 aged right-side 145
        20T10:00 B1 aged left-side  142
        """);
    var found = scene.at(LATER);
    assertBody(found, "boning_kg", "287.000");
    // 7 / 294
    assertBody(found, "ageing_shrink_pct", "2.381");
  }

  @Test
  void aSidePartlyAgedShrinksOverTheAgedPartsOnly() {
    scene.weigh(
        """
        03T10:00 B1 cold forequarter 80
        03T10:01 B1 cold forequarter 80
        03T10:02 B1 cold hindquarter 67
        03T10:03 B1 cold hindquarter 67
        20T10:00 B1 aged hindquarter 65
        20T10:01 B1 aged hindquarter 65
        """);
    var found = scene.at(LATER);
    // Forequarters 160 cold, hindquarters 130 aged
    assertBody(found, "boning_kg", "290.000");
    // 4 of the 134 that the hindquarters weighed cold
    assertBody(found, "ageing_shrink_pct", "2.985");
  }

  @Test
  void ageingShrinkIsBlankWhereTheColdWeightOfTheAgedPartsIsNotKnownApart() {
    scene.weigh(
        """
        03T10:00 B1 cold carcase     294
        20T10:00 B1 aged hindquarter  65
        20T10:01 B1 aged hindquarter  65
        """);
    var found = scene.at(LATER);
    assertBody(found, "ageing_shrink_pct", "");
    assertBody(found, "boning_kg", "294.000");
  }

  @Test
  void whatIsTrimmedOffBeforeTheColdWeightIsNoShrinkAndNoCuttingLoss() {
    scene.weigh("02T12:00 B1 bin fat 2").simpleBody();
    var found = scene.at(LATER);
    assertBody(found, "rail_trim_kg", "2.000");
    // (300 - 294 - 2) / 300
    assertBody(found, "chill_shrink_pct", "1.333");
    assertBody(found, "cutting_loss_kg", "0.000");
    // It is still fat that was binned.
    assertBody(found, "fat_kg", "36.000");
    assertBody(found, "days_hung", "3");
  }

  @Test
  void skirtPackedOffTheRailGoesHome() {
    scene.weigh("02T12:00 B1 pack thick-skirt 1.5").simpleBody();
    var found = scene.at(LATER);
    assertBody(found, "take_home_kg", "201.500");
    assertBody(found, "rail_trim_kg", "1.500");
    assertBody(found, "cutting_loss_kg", "0.000");
  }

  @Test
  void whatIsTrimmedOnTheDayOfTheColdWeightIsACut() {
    scene.weigh("03T09:00 B1 bin fat 2").simpleBody();
    var found = scene.at(LATER);
    assertBody(found, "rail_trim_kg", "0.000");
    assertBody(found, "cutting_loss_kg", "-2.000");
    assertBody(found, "chill_shrink_pct", "2.000");
    assertBody(found, "days_hung", "1");
  }

  @Test
  void whatWasWeighedBeforeTheHotWeightIsNoRailTrim() {
    scene.weigh("02T09:00 B1 bin fat 2").simpleBody();
    var found = scene.at(LATER);
    assertBody(found, "rail_trim_kg", "0.000");
    assertBody(found, "chill_shrink_pct", "2.000");
  }

  @Test
  void crustTrimmedBeforeTheAgedWeightIsNoAgeingShrink() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        10T10:00 B1 bin  fat       3
        20T10:00 B1 aged carcase 285
        21T10:00 B1 pack rump    285
        """);
    var found = scene.at(LATER);
    // (294 - 285 - 3) / 294
    assertBody(found, "ageing_shrink_pct", "2.041");
    assertBody(found, "chill_shrink_pct", "2.000");
    assertBody(found, "rail_trim_kg", "3.000");
    assertBody(found, "cutting_loss_kg", "0.000");
  }

  @Test
  void liverPackedOnKillDayStartsNoCuttingAndIsShownOnItsOwn() {
    scene.weigh("02T12:00 B1 pack liver 6").simpleBody();
    var found = scene.at(LATER);
    assertBody(found, "offal_kg", "6.000");
    assertBody(found, "take_home_kg", "200.000");
    assertBody(found, "rail_trim_kg", "0.000");
    assertBody(found, "cutting_loss_kg", "0.000");
    assertBody(found, "days_hung", "3");
    assertBody(found, "take_home_of_hot_pct", "66.667");
  }

  @Test
  void aBodyHungBeyondTheShopsLimitIsMarked() {
    scene.set("limit.days_hung=2").simpleBody();
    assertEquals("mark", scene.at(LATER).notice("hung-long", "severity"));
    scene.set("limit.days_hung=3");
    assertEquals(0, scene.at(LATER).notices().size());
  }

  @Test
  void aCutWithBackboneOfOldCattleIsMarkedWhereItMayNotGoHome() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack t-bone  200
        05T10:20 B1 bin  bone     90
        """);
    assertEquals(0, scene.at(LATER).notices().size());
    scene.set("region=uk");
    assertEquals("mark", scene.at(LATER).notice("vertebra-packed", "severity"));
    scene.file(
        "bodies.csv", "body,species,killed,customer,age_months", "B1,beef,2026-03-02,ann,29");
    assertEquals(0, scene.at(LATER).notices().size());
  }

  @Test
  void neitherLiverNorRailTrimMakesTheBodyLookCut() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T12:00 B1 pack liver     6
        02T12:05 B1 bin  fat       2
        03T10:00 B1 cold carcase 292
        """);
    assertEquals("open", scene.at(LATER).state("B1"));
    assertBody(scene.at(LATER), "days_hung", "");
  }

  @Test
  void shrinkIsRoundedHalfAwayFromZeroOnBothSides() {
    scene.body("B2,beef,2026-03-02,ann");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 200
        03T10:00 B1 cold carcase 199.999
        02T10:00 B2 hot  carcase 200
        03T10:00 B2 cold carcase 200.001
        """);
    var found = scene.at(LATER);
    // One gram of 200 kg is 0.0005 %.
    assertBody(found, "chill_shrink_pct", "0.001");
    assertEquals("-0.001", found.body("B2", "chill_shrink_pct"));
    assertEquals("B2", found.notice("cold-above-hot", "body"));
  }

  @Test
  void inTheRepeatedHourTheOrderOfTheExportDecides() {
    // In Berlin the clock goes back from three to two on 25 October 2026.
    scene.set("zone=Europe/Berlin").body("B2,beef,2026-10-24,ann");
    scene.weigh(
        """
        2026-10-25T02:50 B2 hot  carcase 300
        2026-10-25T02:10 B2 cold carcase 299
        """);
    assertEquals("0.333", scene.at("2026-10-26T00:00").body("B2", "hours_chilled"));
  }

  @Test
  void liverAloneTellsNothingOfTakeHome() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T12:00 B1 pack liver     6
        03T10:00 B1 cold carcase 294
        """);
    assertBody(scene.at(LATER), "take_home_kg", "");
    assertBody(scene.at(LATER), "cutting_loss_kg", "");
  }

  @Test
  void whatIsCutFromPartsThatDoNotAgeIsAnOrdinaryEndProduct() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase     300
        03T10:00 B1 cold forequarter  80
        03T10:01 B1 cold forequarter  80
        03T10:02 B1 cold hindquarter  67
        03T10:03 B1 cold hindquarter  67
        05T10:00 B1 pack chuck       155
        06T10:00 B1 bin  rump          1
        20T10:00 B1 aged hindquarter  65
        20T10:01 B1 aged hindquarter  65
        21T10:00 B1 pack rump        128
        """);
    var found = scene.at(LATER);
    // The rump lies under the hindquarter, the chuck does not.
    assertBody(found, "rail_trim_kg", "1.000");
    // (134 - 130 - 1) / 134
    assertBody(found, "ageing_shrink_pct", "2.239");
    // 160 + 130 - 155 - 128
    assertBody(found, "cutting_loss_kg", "7.000");
    assertBody(found, "take_home_kg", "283.000");
    assertBody(found, "days_hung", "3");
  }

  @Test
  void aCutUnderTheHindquarterDoesNotLieUnderTheRightOne() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase           300
        03T10:00 B1 cold left-side         147
        03T10:01 B1 cold right-forequarter  80
        03T10:02 B1 cold right-hindquarter  67
        06T10:00 B1 bin  rump                1
        20T10:00 B1 aged right-hindquarter  65
        """);
    var found = scene.at(LATER);
    assertBody(found, "rail_trim_kg", "0.000");
    assertBody(found, "boning_kg", "292.000");
    // 2 / 67
    assertBody(found, "ageing_shrink_pct", "2.985");
  }

  @Test
  void aSecondWeighingOfAnAgedDayThatALaterDayReplacesHoldsNothing() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        10T10:00 B1 aged carcase 290
        10T10:05 B1 aged carcase 291
        21T10:00 B1 pack rump    285
        """);
    assertEquals("held row-set-aside", scene.at(LATER).state("B1"));
    scene.weigh("20T10:00 B1 aged carcase 285");
    var found = scene.at(LATER);
    assertEquals("issued", found.state("B1"));
    assertEquals("6 = 6 + 0 + 0 + 0", found.counts());
    assertBody(found, "boning_kg", "285.000");
  }
}
