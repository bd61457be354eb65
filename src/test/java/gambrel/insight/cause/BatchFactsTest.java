package gambrel.insight.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class BatchFactsTest {
  /** A change may take the only row from a batch. */
  @Test
  void aBatchWithoutAWeighingIsNeitherOddNorFarFromTheUsual() {
    var none = new BatchFacts(null, Optional.empty());

    assertEquals(0, none.strain(BatchFacts.Shift.NONE));
    assertEquals(Optional.empty(), none.distance());
  }
}
