package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.yields.Yields;
import gambrel.scenes.Scene;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrimalsAndStylesTest {
  @TempDir Path folder;

  private Scene scene;

  /** Two steers of 100 kg into the boning room. */
  @BeforeEach
  void twoSteersOnTheRail() {
    scene = Books.shop(folder);
    for (int i = 1; i <= 2; i++) {
      scene.body("B" + i + ",beef,steer,2026-03-02,ann");
      scene.weigh(
          "02T10:0%d B%d hot carcase 102\n03T10:0%d B%d cold carcase 100".formatted(i, i, i, i));
    }
  }

  /** Rump 4 and T-bone 5 of one, rump 6 of the other: 15 of 200 kg. Mince is of no primal. */
  @Test
  void everythingUnderAPrimalAddsUp() {
    scene.weigh(
        """
        05T10:00 B1 pack rump-steak 4
        05T10:01 B1 pack t-bone 5
        05T10:02 B1 pack mince 90
        05T11:00 B2 pack rump-steak 6
        05T11:01 B2 pack mince 93
        """);
    var records = Books.march(scene);
    var primals =
        Yields.of(records).stream().filter(f -> f.name() == FigureName.PRIMAL_PCT).toList();
    assertEquals(
        List.of("rump-and-loin"), primals.stream().map(figure -> figure.group().id()).toList());
    var figure = primals.get(0);
    assertEquals(2, figure.bodies());
    assertEquals(BigFraction.of(15, 2), figure.value().orElseThrow());
    assertTrue(figure.before().spread().isEmpty());
  }

  /** 5 kg of T-bone of 100 are a way of cutting; 0.9 kg are an odd steak. */
  @Test
  void wayOfCuttingIsWhatIsPackedOnTheBoneInEarnest() {
    scene.weigh(
        """
        05T10:00 B1 pack t-bone 5
        05T10:01 B1 pack mince 94
        05T11:00 B2 pack t-bone 0.9
        05T11:01 B2 pack mince 98
        """);
    var bodies = Books.march(scene).bodies().cut();
    assertEquals(List.of("t-bone", ""), bodies.stream().map(MonthBody::style).toList());
  }
}
