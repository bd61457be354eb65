package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.files.publish.HastyDisk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * One run at a time works in an output folder; its lock ends with its process. {@code
 * -Doverlaps=50} for more processes.
 */
@Timeout(600)
class OneAtATimeTest {
  private static final int PROCESSES = Integer.getInteger("overlaps", 6);
  private static final int FIRST_DOCUMENT = -1;

  @TempDir private Path folder;
  private TwoNights nights;
  private Path out;

  @BeforeEach
  void layYesterday() throws Exception {
    nights = TwoNights.of(folder, false);
    out = nights.lay(folder.resolve("out"));
  }

  private NightChild child() {
    return NightChild.waitingAt(FIRST_DOCUMENT, nights.shop(), out, false);
  }

  @Test
  void ofManyThatStartTogetherOneWorksAndTheOthersLeaveWithoutChangingAnything() throws Exception {
    var children = new ArrayList<NightChild>();
    try {
      for (int i = 0; i < PROCESSES; i++) {
        children.add(child());
      }
      for (var child : children) {
        child.await(NightChild.READY);
      }
      for (var child : children) {
        child.letOn();
      }
      var working = new ArrayList<NightChild>();
      for (var child : children) {
        if (child.listen().equals(Optional.of(NightChild.WAITING))) {
          working.add(child);
        } else {
          assertEquals(3, child.exitCode());
        }
      }

      assertEquals(1, working.size());
      assertEquals(nights.yesterday(), Trees.published(out));
      working.get(0).letOn();
      assertEquals(1, working.get(0).exitCode());
      assertEquals(nights.today(), Trees.published(out));
    } finally {
      children.forEach(NightChild::close);
    }
  }

  @Test
  void theHoldGoesWithTheProcessThatIsKilled() throws Exception {
    try (var child = child()) {
      child.await(NightChild.READY);
      child.letOn();
      child.await(NightChild.WAITING);
      assertEquals(3, nights.run(out, false, new HastyDisk()).exitCode());

      child.kill();
    }

    assertEquals(1, nights.run(out, false, new HastyDisk()).exitCode());
    assertEquals(nights.today(), Trees.published(out));
  }
}
