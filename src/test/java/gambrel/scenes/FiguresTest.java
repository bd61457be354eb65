package gambrel.scenes;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.Night;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test of a body's figures. Unless a test says otherwise they are as of 20 March 2026. */
public abstract class FiguresTest {
  @TempDir private Path folder;

  /** The shop folder. */
  protected Scene scene;

  @BeforeEach
  void openScene() {
    scene = new Scene(folder);
  }

  /** The night. */
  protected Night night() {
    return scene.reckon("20T02:00");
  }

  /** Body B1. */
  protected BodyBalance balance() {
    return night().bodies().get("B1").balance();
  }

  /** A weight in kilograms. */
  protected static Weight kg(String weight) {
    return Weight.of(new BigDecimal(weight));
  }

  /** A known weight in kilograms. */
  protected static Optional<Weight> known(String weight) {
    return Optional.of(kg(weight));
  }

  /** A known share of weights in kilograms. */
  protected static Optional<Share> share(String part, String whole) {
    return Optional.of(new Share(kg(part), kg(whole)));
  }
}
