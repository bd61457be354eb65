package gambrel.pages.statement;

import static gambrel.pages.statement.FarmShop.answer;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a statement says to "Is that normal?". */
class NormalAnswerTest {
  @TempDir private Path folder;
  private FarmShop shop;

  @BeforeEach
  void openTheShop() {
    shop = new FarmShop(folder);
  }

  /** Steers of Bob's, cut on the 5th like Ann's B1. */
  private void cutBefore(int number) {
    for (int i = 1; i <= number; i++) {
      String id = "X" + i;
      shop.add("bodies.csv", id + ",beef,steer,2026-03-02,,,20,c-bob,1,,,").weighed(id);
    }
  }

  /** Ann's steer B9, weighed cold at 98 and cut on the 6th; the mince is given. */
  private void steer(String hot, String mince) {
    shop.add("bodies.csv", "B9,beef,steer,2026-03-02,,,20,c-ann,1,,,");
    shop.row("02T09:00", "B9", "hot", hot).row("03T09:00", "B9", "cold", "98");
    shop.row("06T09:00", "B9", "rump", "10").row("06T09:01", "B9", "mince", mince);
    shop.row("06T09:02", "B9", "dog", "6").row("06T09:03", "B9", "bone", "15");
    shop.row("06T09:04", "B9", "fat", "5");
  }

  private List<String> normal() {
    return answer(shop.statement("B9", "c-ann"), "normal");
  }

  /**
   * All eight lost 2 of 100 and 2 of 98; how they scatter is known from the scales alone. Chiller:
   * two weighings in steps of 0.5 make 0.5 · √(2/12) = 0.204; Student's t of 7 degrees of freedom,
   * 1/20 divided by three figures, is 3.13; 3.13 · 0.204 · √(1 + 1/8) = 0.68.
   */
  @Test
  void saysWhatIsUsualAndWithWhatItWasCompared() {
    cutBefore(8);
    steer("100", "60");
    assertEquals(
        List.of(
            "Yes: loss in the chiller, bench loss, take-home. Compared with our last 8 like it"
                + " (steer).",
            "Lost in the chiller 2.0% of the hot weight; ours 1.3% to 2.7%.",
            "Bench loss 2.0% of the weight into the boning room; ours 1.6% to 2.5%.",
            "Take-home 77.6% of the cold weight; ours 77.1% to 78.0%.",
            "“Like it”: of its class, cut as it was with or without bone, weighed at the same steps."
                + " By chance, 1 sound animal in 20 is outside one of these ranges."),
        normal());
  }

  @Test
  void saysWhatIsNot() {
    cutBefore(8);
    steer("103.5", "60");
    assertEquals(
        "Not in everything: see what differs from our last 8 like it (steer).", normal().get(0));
    assertEquals(
        "Lost in the chiller 5.3% of the hot weight; ours 1.3% to 2.7%. Yours is higher.",
        normal().get(1));
  }

  @Test
  void saysNothingOfItsOwnWithFewerThanEightBefore() {
    cutBefore(7);
    steer("100", "60");
    assertEquals(List.of("We have had too few like it to say."), normal());
  }

  @Test
  void saysOfAReleasedBodyThatItWasReleased() {
    cutBefore(8);
    steer("100", "40");
    shop.add("releases.csv", "body,by,on,reason,action");
    shop.add("releases.csv", "B9,Eve,2026-03-15,a tub was spilt,release");
    assertEquals(List.of("Not compared: its weights were checked and released by hand."), normal());
  }

  @Test
  void saysNothingOfABodyThatIsHeld() {
    cutBefore(8);
    steer("100", "40");
    assertEquals(List.of(), normal());
  }

  @Test
  void printsWhatIsPublishedInTheRegionWhereTooFewWereCut() {
    shop.add("shop.properties", "region=us").steer();
    assertEquals(
        List.of(
            "We have cut too few like it to say. Published ranges:",
            "Lost in the cooler 2.0% of the hot weight; published 1% to 5% (Kansas State Univ."
                + " Report 557, Univ. of Tennessee PB 1822).",
            "Carcass 55.6% of the live weight; published 56% to 63% (grass- and grain-fed, Univ. of"
                + " Kentucky ASC-179)."),
        answer(shop.statement("B1", "c-ann"), "normal"));
  }

  @Test
  void comparesNoGuessedLiveWeight() {
    shop.add("shop.properties", "region=us");
    shop.add("bodies.csv", "B1,beef,steer,2026-03-02,180,yes,20,c-ann,1,,,").weighed("B1");
    var lines = answer(shop.statement("B1", "c-ann"), "normal");
    assertEquals(2, lines.size(), lines::toString);
  }

  @Test
  void saysThatTooFewAreKnownOfAKindOfWhichNothingIsPublished() {
    shop.steer();
    assertEquals(
        List.of("We have had too few like it to say."),
        answer(shop.statement("B1", "c-ann"), "normal"));
  }
}
