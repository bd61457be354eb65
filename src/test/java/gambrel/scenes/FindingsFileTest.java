package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code findings.csv}: what the months found, one row each. */
class FindingsFileTest extends SceneTest {
  private static List<String> rows(Found found) {
    return found.rows("findings").stream().map(row -> String.join("|", row.values())).toList();
  }

  /** Ann has not paid for B1 in May; the shop's own B2 is worth 40 less than it cost. */
  @Test
  void aFindingSaysWhomItAccusesSinceWhenAndWhatItIsWorth() {
    scene.simpleBody();
    scene.file("charges.csv", "charge,description,basis,price", "a,Cutting,head,100");
    scene.nextNight("12T02:00");
    scene.file(
        "bodies.csv",
        "body,species,killed,customer,live_weight,supplier,cost",
        "B1,beef,2026-03-02,ann,560,,",
        "B2,beef,2026-05-04,shop,560,Tarn Farm,2980");
    scene.file("values.csv", "item,value", "rump,10");
    scene.weigh(
        """
        2026-05-04T10:00 B2 hot  carcase 300
        2026-05-05T10:00 B2 cold carcase 294
        2026-05-07T10:00 B2 pack rump    294
        """);
    assertEquals(
        List.of("2026-05|1|unpaid|own||ann|2026-03-12|100.00|", "2026-05|2|stock|own||B2||40.00|"),
        rows(scene.nextNight("2026-05-31T02:00")));
  }

  @Test
  void aBatchOutOfBalanceIsNamedAndItsWorthIsNotKnown() {
    scene.set("bins=partly").file("batches.csv", "batch,product", "M1,Mince");
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    194
        05T10:10 B1 tub  trim    100 batch=M1
        05T12:00 B1 pack mince    50 batch=M1
        """);
    assertEquals(List.of("2026-03|1|batch|||M1|||"), rows(scene.at(LATER)));
  }
}
