package gambrel.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is made on several threads comes in the order in which it was asked for. */
class SideBySideTest {
  private static final List<Integer> ITEMS = IntStream.range(0, 40).boxed().toList();

  @Test
  void handsOverInOrderHoweverFastTheThreadsAre() throws IOException {
    var secondIsDone = new CountDownLatch(Runtime.getRuntime().availableProcessors() > 1 ? 1 : 0);
    var taken = new ArrayList<Integer>();
    SideBySide.each(
        ITEMS,
        item -> {
          if (item == 1) {
            secondIsDone.countDown();
          } else if (item == 0) {
            await(secondIsDone);
          }
          return item;
        },
        taken::add);
    assertEquals(ITEMS, taken);
  }

  @Test
  void endsWithTheFailureThatIsFirstInOrder() {
    var taken = new ArrayList<Integer>();
    var failure =
        assertThrows(
            IOException.class,
            () ->
                SideBySide.each(
                    ITEMS,
                    item -> {
                      if (item >= 5) {
                        throw new IOException("item " + item);
                      }
                      return item;
                    },
                    taken::add));
    assertEquals("item 5", failure.getMessage());
    assertEquals(List.of(0, 1, 2, 3, 4), taken);
  }

  private static void await(CountDownLatch latch) throws IOException {
    try {
      if (!latch.await(1, TimeUnit.MINUTES)) {
        throw new IOException("the second was never begun");
      }
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }
}
