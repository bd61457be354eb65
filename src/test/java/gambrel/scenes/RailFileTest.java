package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** {@code rail.csv}: what hangs, is being cut, waits for a batch or is held. */
class RailFileTest extends SceneTest {
  /** The row of B1 without its id; {@code none} if it has no row. */
  private String row(String asOf) {
    return row("B1", asOf);
  }

  private String row(String body, String asOf) {
    return scene.at(asOf).rows("rail", "body=" + body).stream()
        .map(row -> String.join("|", row.values()).substring(body.length() + 1))
        .findFirst()
        .orElse("none");
  }

  @Test
  void aBodyIsThereFromItsKill() {
    assertEquals("none", row("01T10:00"));
    assertEquals("ann|beef|2026-03-02|0|open||||0.000|".replace("||||", "|||"), row("02T09:00"));
  }

  @Test
  void itsHotWeightStandsUntilItIsWeighedCold() {
    scene.weigh("02T10:00 B1 hot carcase 300");
    assertEquals("ann|beef|2026-03-02|1|open||300.000|0.000|", row("03T09:00"));
    scene.weigh("03T10:00 B1 cold carcase 294");
    assertEquals("ann|beef|2026-03-02|1|open||294.000|0.000|", row("03T11:00"));
  }

  @Test
  void whatIsCutSoFarIsPacksTubsAndBinsWithoutOffal() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T10:10 B1 pack liver     6
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    120
        05T10:10 B1 tub  trim     40 batch=M1
        05T10:20 B1 bin  bone     60
        """);
    assertEquals(
        "ann|beef|2026-03-02|3|open|batch-open;part-cut|294.000|220.000|", row("05T23:00"));
  }

  @Test
  void aBodyThatWaitsForABatchSaysWhenItIsDue() {
    scene.file("batches.csv", "batch,product,due", "M1,Ham,2026-03-20", "M2,Bacon,2026-03-18");
    scene.set("bins=partly");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 tub  trim    100 batch=M1
        05T10:10 B1 tub  trim    194 batch=M2
        """);
    assertEquals("ann|beef|2026-03-02|3|open||294.000|294.000|2026-03-20", row("05T11:00"));
  }

  @Test
  void aHeldBodySaysWhyAndOneThatIsIssuedIsGone() {
    scene.simpleBody();
    assertEquals("none", row("12T02:00"));
    scene.weigh("05T10:40 B1 pack rump 100");
    assertEquals("ann|beef|2026-03-02|10|held|loss-negative|294.000|394.000|", row("12T02:00"));
  }

  @Test
  void ownersAreAllNamedAndABodyWithoutAKillIsThereOnceItIsWeighed() {
    scene
        .body("B2,lamb,,,", "B3,lamb,,cat,")
        .file("shares.csv", "body,customer,share", "B2,bob,1/2", "B2,ann,1/2");
    scene.weigh("02T10:00 B2 hot carcase 20");
    assertEquals("ann;bob|lamb|||open||20.000|0.000|", row("B2", "03T10:00"));
    assertEquals("none", row("B3", "03T10:00"));
  }
}
