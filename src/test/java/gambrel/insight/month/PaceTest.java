package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.pace.Pace;
import gambrel.scenes.Scene;
import gambrel.trade.cuts.Species;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaceTest {
  @TempDir Path folder;

  private Scene scene;

  @BeforeEach
  void wynBonesOnTheFifth() {
    scene =
        Books.shop(folder)
            .body("B1,beef,steer,2026-03-02,ann")
            .file(
                "bench.csv",
                "scale,from,to,body,batch,customer,boner",
                "bench,2026-03-05T06:00,2026-03-05T18:00,,,,Wyn");
  }

  /** Three hindquarters of 50, 54 and 46 kg, 10, 12 and 8 minutes; the fourth has no end. */
  @Test
  void pieceTakesFromItsWeighingToTheBonersNext() {
    scene.weigh(
        """
        05T08:00 B1 block hindquarter 50
        05T08:10 B1 block left-hindquarter 54
        05T08:22 B1 block hindquarter 46
        05T08:30 B1 block hindquarter 52
        """);
    var figures = figures(Books.march(scene));
    assertEquals("hindquarter Wyn", figures.get(0).group().id());
    assertEquals(List.of(3, 3), figures.stream().map(MonthFigure::bodies).toList());
    assertEquals(Optional.of(BigFraction.of(10)), figures.get(0).value());
    assertEquals(Optional.of(BigFraction.of(150 * 60, 30)), figures.get(1).value());
  }

  /** Ten minutes are usual, so forty are a break. */
  @Test
  void breaksAreLeftOutAndCounted() {
    scene.weigh(
        """
        05T08:00 B1 block hindquarter 50
        05T08:10 B1 block hindquarter 50
        05T08:20 B1 block hindquarter 50
        05T09:00 B1 block hindquarter 50
        05T09:10 B1 block hindquarter 50
        """);
    var records = Books.march(scene);
    assertEquals(3, figures(records).get(0).bodies());
    assertEquals(1, Pace.of(records).month().breaks());
  }

  @Test
  void piecesFetchedTogetherShareTheirTime() {
    scene.weigh(
        """
        05T08:00:00 B1 block hindquarter 50
        05T08:00:30 B1 block hindquarter 50
        05T08:20:00 B1 block hindquarter 50
        """);
    var minutes = figures(Books.march(scene)).get(0);
    assertEquals(2, minutes.bodies());
    assertEquals(Optional.of(BigFraction.of(10)), minutes.value());
  }

  @Test
  void pieceOfAPieceEndsNothing() {
    scene.weigh(
        """
        05T08:00 B1 block hindquarter 50
        05T08:04 B1 block rump 4
        05T08:12 B1 block hindquarter 50
        """);
    var minutes = figures(Books.march(scene)).get(0);
    assertEquals(Optional.of(BigFraction.of(12)), minutes.value());
  }

  @Test
  void packsShowThePackerAndABlankBonerNobody() {
    scene.weigh(
        """
        05T08:00 B1 pack rump-steak 2
        05T08:10 B1 pack rump-steak 2
        06T08:00 B1 block hindquarter 50
        06T08:10 B1 block hindquarter 50
        """);
    var records = Books.march(scene);
    assertEquals(List.of(), figures(records));
    assertTrue(Pace.of(records).of(Species.BEEF).month().weightAnHour().isEmpty());
  }

  private static List<MonthFigure> figures(MonthRecords records) {
    return Pace.of(records).figures(records);
  }
}
