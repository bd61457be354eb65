package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code causes.csv}: what was suggested for bodies that do not balance. */
class CausesFileTest extends SceneTest {
  private static List<String> rows(Found found) {
    return found.rows("causes").stream().map(row -> String.join("|", row.values())).toList();
  }

  @Test
  void aCorrectionIsThereToPasteWithTheLossBeforeAndAfterIt() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    120
        05T10:10:00 B1 pack mince 80
        05T10:10:05 B1 pack mince 80
        05T10:20 B1 bin  bone     60
        05T10:30 B1 bin  fat      34
        """);
    // (294 - 374) / 294 = -27.211 %
    assertEquals(
        List.of("B1|1|double-press|bench|5|status|void|-27.211|0.000"), rows(scene.at(LATER)));
  }

  @Test
  void aWeighingThatIsMissingHasNothingToPaste() {
    scene.weigh(
        """
        02T10:00 B1 hot  side 150
        02T10:05 B1 hot  side 150
        03T10:00 B1 cold side 147
        05T10:00 B1 pack rump 120
        05T10:10 B1 pack mince 80
        05T10:20 B1 bin  bone  60
        05T10:30 B1 bin  fat   34
        """);
    // (147 - 294) / 147 = -100 %; with the second side 294 of 294 came out
    assertEquals(List.of("B1|1|part-not-weighed|||||-100.000|0.000"), rows(scene.at(LATER)));
  }

  @Test
  void withoutABodyThatDoesNotBalanceThereIsNone() {
    assertEquals(List.of(), rows(scene.simpleBody().at(LATER)));
  }
}
