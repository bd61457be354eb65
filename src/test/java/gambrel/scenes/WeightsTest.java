package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Gross, tare, net and units of a row. */
class WeightsTest extends SceneTest {

  private static void assertTakeHome(Found found, String expected) {
    assertBody(found, "take_home_kg", expected);
  }

  @Test
  void aMissingNetIsGrossLessTheRowsTare() {
    scene.weigh("05T10:00 B1 pack rump - gross=10.5 tare=0.5");
    assertTakeHome(scene.at(LATER), "10.000");
  }

  @Test
  void withoutATareInTheRowTheCodesTareIsTaken() {
    scene.add("codes.csv", "r,rump,pack,,0.25,");
    scene.weigh("05T10:00 B1 - - - code=r gross=10.5 pieces=4");
    assertTakeHome(scene.at(LATER), "10.250");
  }

  @Test
  void theCodesTareMayCountForEachPiece() {
    scene.add("codes.csv", "r,rump,pack,,0.25,yes");
    scene.weigh("05T10:00 B1 - - - code=r gross=10.5 pieces=4");
    assertTakeHome(scene.at(LATER), "9.500");
  }

  @Test
  void theNetStandsWhereGrossAndTareAgreeWithinADivision() {
    // Division 0.01
    scene.weigh("05T10:00 B1 pack rump 10.00 gross=10.51 tare=0.5");
    assertTakeHome(scene.at(LATER), "10.000");
  }

  @Test
  void moreThanADivisionApartIsSetAside() {
    scene.weigh("05T10:00 B1 pack rump 10.00 gross=10.511 tare=0.5");
    var found = scene.at(LATER);
    assertEquals("1 = 0 + 0 + 0 + 1", found.counts());
    assertEquals("hold", found.notice("net-disagrees", "severity"));
  }

  @Test
  void neitherNetNorGrossIsSetAside() {
    scene.weigh("05T10:00 B1 pack rump - tare=0.5");
    assertEquals("hold", scene.at(LATER).notice("net-missing", "severity"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ten", "1.23E+1", "1 000", "--1"})
  void whatIsNoNumberIsSetAside(String net) {
    scene.weigh("exports/a.csv", "05T10:00 B1 pack rump 1");
    scene.add("exports/a.csv", "bench,99,2026-03-05T10:03,B1,pack.rump," + net + ",,,,,,,,");
    var found = scene.at(LATER);
    assertEquals("2 = 1 + 0 + 0 + 1", found.counts());
    assertEquals("hold", found.notice("number-bad", "severity"));
  }

  @Test
  void aRowMayHaveItsOwnUnit() {
    // 100 lb are exactly 45.359237 kg, kept as 45.35924
    scene.weigh("05T10:00 B1 pack rump 100 unit=lb\n05T10:00 B1 pack rump 500 unit=g");
    assertTakeHome(scene.at(LATER), "45.859");
  }

  @Test
  void convertedWeightsAreKeptToTheHundredThousandthAndThoseAreSummed() {
    // 0.01 oz are 0.00028349523125 kg, kept as 0.00028; a hundred of them are 0.028
    for (int i = 0; i < 100; i++) {
      scene.weigh("05T10:00 B1 pack rump 0.01 unit=oz");
    }
    assertTakeHome(scene.at(LATER), "0.028");
  }

  @Test
  void aScaleMayHaveItsOwnUnit() {
    scene.file("scales.csv", "scale,division,unit", "bench,0.02,lb");
    scene.weigh("05T10:00 B1 pack rump 100\n05T10:01 B1 pack rump 1 unit=kg");
    var found = scene.at(LATER);
    assertTakeHome(found, "46.359");
  }

  @Test
  void aPoundShopReckonsInPounds() {
    scene.set("unit=lb");
    scene.weigh("05T10:00 B1 pack rump 100\n05T10:01 B1 pack rump 45.359237 unit=kg");
    assertEquals("200.000", scene.at(LATER).body("B1", "take_home_lb"));
  }

  @Test
  void aUnitThatIsNotUnderstoodIsSetAside() {
    scene.weigh("05T10:00 B1 pack rump 1 unit=stone");
    assertEquals("hold", scene.at(LATER).notice("unit-bad", "severity"));
  }

  @Test
  void nothingIsLostToBinaryFractions() {
    for (int i = 0; i < 10; i++) {
      scene.weigh("05T10:00 B1 pack rump 0.1");
    }
    assertTakeHome(scene.at(LATER), "1.000");
  }
}
