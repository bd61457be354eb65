package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Packs, tubs and bins: what a body came to and what does not add up. */
class AtTheBlockTest extends SceneTest {

  @Test
  void packsTubsAndBinsAreTakenFromTheWeightIntoTheBoningRoom() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase   300
        03T10:00 B1 cold carcase   294
        05T10:00 B1 pack rump      120
        05T10:05 B1 pack dog-bones  10
        05T10:10 B1 tub  trim       80 batch=M1
        05T10:15 B1 bin  bone       50
        05T10:20 B1 bin  fat        20
        05T10:25 B1 bin  risk-material 8
        05T10:30 B1 bin  rump        2
        06T10:00 -  pack mince      80 batch=M1
        """);
    var found = scene.at(LATER);
    assertBody(found, "cutting_loss_kg", "4.000");
    // 120 + 10 + 80 of the batch; the dog's bones are no meat
    assertBody(found, "take_home_kg", "210.000");
    assertBody(found, "meat_home_kg", "200.000");
    assertBody(found, "tub_kg", "80.000");
    assertBody(found, "bone_kg", "50.000");
    assertBody(found, "fat_kg", "20.000");
    // Whatever is neither bone nor fat
    assertBody(found, "waste_kg", "10.000");
    assertBody(found, "take_home_of_hot_pct", "70.000");
    assertBody(found, "take_home_of_cold_pct", "71.429");
    assertBody(found, "meat_of_cold_pct", "68.027");
  }

  @Test
  void aTubWithoutABatchMovesNoMass() {
    scene.simpleBody().weigh("05T09:00 B1 tub trim 80");
    var found = scene.at(LATER);
    assertBody(found, "tub_kg", "0.000");
    assertBody(found, "cutting_loss_kg", "0.000");
  }

  @Test
  void otherWeighingsOnTheSameScaleMoveNoMass() {
    scene.simpleBody().weigh("05T11:00 B1 other rump 200");
    var found = scene.at(LATER);
    assertBody(found, "take_home_kg", "200.000");
    assertEquals("7 = 7 + 0 + 0 + 0", found.counts());
  }

  @Test
  void whereOnlyPacksAreWeighedTheRestIsUnweighedAndNotTested() {
    scene.set("bins=no").simpleBody();
    var found = scene.at(LATER);
    // 294 - 120 - 80; what the bin scale says is not asked
    assertBody(found, "unweighed_kg", "94.000");
    for (String column :
        List.of("cutting_loss_kg", "bone_kg", "fat_kg", "waste_kg", "balance_u_kg")) {
      assertBody(found, column, "");
    }
    assertEquals("issued", found.state("B1"));
  }

  @Test
  void whereBinsAreWeighedInPartTheLossIsShownAndNotTested() {
    scene.set("bins=partly");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    200
        05T10:20 B1 bin  bone     10
        """);
    var found = scene.at(LATER);
    assertBody(found, "cutting_loss_kg", "84.000");
    assertBody(found, "bone_kg", "10.000");
    assertEquals("issued", found.state("B1"));
  }

  @Test
  void aMobIsOneBodyToTheBlock() {
    scene.body("M1,lamb,2026-03-02,ann,135,3");
    scene.weigh(
        """
        02T10:00 M1 hot  carcase 21 pieces=1
        02T10:01 M1 hot  carcase 42 pieces=2
        03T10:00 M1 cold carcase 61.5 pieces=3
        05T10:00 M1 pack leg     30
        05T10:05 M1 bin  bone    31.5
        """);
    var found = scene.at(LATER);
    assertEquals("63.000", found.body("M1", "hot_kg"));
    assertEquals("46.667", found.body("M1", "dressing_pct"));
    assertEquals("0.000", found.body("M1", "cutting_loss_kg"));
    assertEquals("3", found.figure("ann", "M1", "body:head"));
  }

  @Test
  void kindAndPlaceOfAnItemMayBeTheShopsOwn() {
    scene.file(
        "cuts.csv",
        "species,item,parent,name,kind",
        "beef,kidney,carcase,Kidneys,meat",
        "beef,pet-food,carcase,Pet food,trim");
    scene.weigh(
        """
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack kidney    1
        05T10:00 B1 pack pet-food 10
        """);
    var found = scene.at(LATER);
    // This shop leaves the kidney in: it hung, so it is meat taken home.
    assertBody(found, "take_home_kg", "11.000");
    assertBody(found, "meat_home_kg", "11.000");
    assertBody(found, "offal_kg", "0.000");
    assertEquals("11.000", found.cell("cuts", "weight_kg", "item=carcase", "level=total"));
  }

  @Test
  void daysHungRunFromTheKillToTheFirstCut() {
    scene.weigh(
        """
        03T10:00 B1 cold  carcase 294
        16T23:59 B1 block rump     20
        18T10:00 B1 pack  rump    290
        """);
    assertBody(scene.at(LATER), "days_hung", "14");
  }

  @Test
  void condemnedLiverIsWasteAndNoCuttingLoss() {
    scene.simpleBody().weigh("02T12:00 B1 bin liver 6");
    var found = scene.at(LATER);
    assertBody(found, "waste_kg", "6.000");
    assertBody(found, "offal_kg", "0.000");
    assertBody(found, "cutting_loss_kg", "0.000");
  }
}
