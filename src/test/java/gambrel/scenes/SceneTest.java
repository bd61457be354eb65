package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A scene for each test. */
abstract class SceneTest {
  /** Long after everything that March holds. */
  static final String LATER = "31T00:00";

  @TempDir Path folder;

  Scene scene;

  @BeforeEach
  void open() {
    scene = new Scene(folder);
  }

  /** The notices of a night on which nobody cares whether bodies wait. */
  static List<String> besidesHeld(Found found) {
    return found.notices().stream().filter(notice -> !notice.equals("hold held")).toList();
  }

  /** Expects a figure of B1 in {@code bodies.csv}. */
  static void assertBody(Found found, String column, String expected) {
    assertEquals(expected, found.body("B1", column), column);
  }
}
