package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gambrel.pages.views.FlowView.Kind;
import gambrel.pages.views.FlowView.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlowViewTest {

  @Test
  void mayFillTheDrawing() {
    assertEquals(1000, new Row(Kind.STAGE, "Alive", 0, FlowView.FULL, "612 kg", "").width());
  }

  @ParameterizedTest
  @CsvSource({"-1, 10", "0, 0", "0, 1001", "999, 2"})
  void mustLieWithinTheDrawingAndBeSeen(int x, int width) {
    assertThrows(
        IllegalArgumentException.class, () -> new Row(Kind.LOST, "Bench loss", x, width, "", ""));
  }
}
