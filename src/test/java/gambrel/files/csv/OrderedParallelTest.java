package gambrel.files.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Results of several threads arrive in the order of their items. */
class OrderedParallelTest {
  private static final List<Integer> ITEMS = IntStream.range(0, 40).boxed().toList();

  @Test
  void handsOverInOrderHoweverFastTheThreadsAre() throws IOException {
    var secondIsDone = new CountDownLatch(Runtime.getRuntime().availableProcessors() > 1 ? 1 : 0);
    var taken = new ArrayList<Integer>();
    OrderedParallel.each(
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
                OrderedParallel.each(
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

  @Test
  void keepsOrderAndLosesNothingOverManyItemsOfUnequalWork() throws IOException {
    var items = IntStream.range(0, 20_000).boxed().toList();
    var taken = new ArrayList<Integer>();
    OrderedParallel.each(items, OrderedParallelTest::worked, taken::add);
    assertEquals(items, taken);
  }

  /** Work that takes longer for some items than for others. */
  private static int worked(int item) {
    var random = new SplittableRandom(item);
    int steps = random.nextInt(200);
    for (int i = 0; i < steps; i++) {
      random.nextInt();
    }
    return item;
  }

  @Test
  void worksWithinItselfWithoutWaitingForItself() throws IOException {
    var taken = new ArrayList<Integer>();
    OrderedParallel.each(
        ITEMS,
        outer -> {
          var inner = new ArrayList<Integer>();
          OrderedParallel.each(
              ITEMS,
              item -> {
                var innermost = new ArrayList<Integer>();
                OrderedParallel.each(List.of(1, 2, 3), one -> one, innermost::add);
                return item + innermost.size();
              },
              inner::add);
          return outer + inner.get(inner.size() - 1);
        },
        taken::add);
    assertEquals(ITEMS.stream().map(item -> item + 39 + 3).toList(), taken);
  }

  @Test
  void isAheadOfWhatIsTakenByFewItemsOnly() throws IOException {
    var begun = new AtomicInteger();
    var most = new AtomicInteger();
    var taken = new AtomicInteger();
    OrderedParallel.each(
        IntStream.range(0, 500).boxed().toList(),
        item -> begun.incrementAndGet(),
        made -> {
          int ahead = begun.get() - taken.getAndIncrement();
          most.accumulateAndGet(ahead, Math::max);
        });
    int allowed = Math.max(1, 3 * Runtime.getRuntime().availableProcessors());
    assertTrue(most.get() <= allowed, () -> most + " made and not yet taken");
  }

  @Test
  void throwsWhateverItsWorkThrowsAsItIs() {
    for (var thrown :
        List.of(
            new IOException("disk"), new IllegalStateException("bug"), new StackOverflowError())) {
      assertSame(thrown, assertThrows(Throwable.class, () -> failing(thrown)));
    }
  }

  private static void failing(Throwable thrown) throws IOException {
    OrderedParallel.each(ITEMS, item -> item == 17 ? failed(thrown) : item, made -> {});
  }

  private static int failed(Throwable thrown) throws IOException {
    if (thrown instanceof IOException disk) {
      throw disk;
    }
    if (thrown instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) thrown;
  }

  @Test
  void endsWithTheFailureOfTakingAndTakesNoMore() {
    var taken = new ArrayList<Integer>();
    var failure =
        assertThrows(
            IOException.class,
            () ->
                OrderedParallel.each(
                    ITEMS,
                    item -> item,
                    made -> {
                      if (made == 7) {
                        throw new IOException("full");
                      }
                      taken.add(made);
                    }));
    assertEquals("full", failure.getMessage());
    assertEquals(List.of(0, 1, 2, 3, 4, 5, 6), taken);
  }

  @Test
  void givesWhatWasBegunOrThrowsWhatItThrew() throws IOException {
    assertEquals("body B1", OrderedParallel.result(OrderedParallel.begin(() -> "body B1")));
    var begun = OrderedParallel.begin(() -> failed(new IOException("disk")));
    var failure = assertThrows(IOException.class, () -> OrderedParallel.result(begun));
    assertEquals("disk", failure.getMessage());
  }

  /** All threads for streams wait for work that itself needs one. */
  @Test
  void whoWaitsLeavesAThreadForTheWork() throws Exception {
    var pool = new ForkJoinPool(2);
    try {
      var waiting =
          IntStream.range(0, 2)
              .mapToObj(
                  i ->
                      pool.submit(
                          () ->
                              OrderedParallel.result(
                                  OrderedParallel.begin(
                                      () ->
                                          CompletableFuture.supplyAsync(() -> i, pool)
                                              .get(1, TimeUnit.MINUTES)))))
              .toList();
      for (int i = 0; i < 2; i++) {
        assertEquals(i, waiting.get(i).get(2, TimeUnit.MINUTES));
      }
    } finally {
      pool.shutdownNow();
    }
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
