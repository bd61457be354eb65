package gambrel.run;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;

/**
 * Works on all processors and hands over what comes of it in the order in which it was asked for,
 * so that nothing depends on which thread was faster.
 */
final class SideBySide {
  /** Enough to keep the threads busy while one result is taken, few enough to hold in memory. */
  private static final int AHEAD_OF_EACH = 2;

  private SideBySide() {}

  /** Makes something of an item, on any thread. */
  interface Work<T, R> {
    R of(T item) throws IOException;
  }

  /** Takes what was made, on the caller's thread. */
  interface Handover<R> {
    void take(R made) throws IOException;
  }

  /** Does the work on each item; what the first that fails in order throws, this throws. */
  static <T, R> void each(List<T> items, Work<T, R> work, Handover<R> handover)
      throws IOException {
    int threads = Math.min(items.size(), Runtime.getRuntime().availableProcessors());
    if (threads < 2) {
      for (var item : items) {
        handover.take(work.of(item));
      }
      return;
    }
    var workers = Executors.newFixedThreadPool(threads, SideBySide::helper);
    try {
      each(items, work, handover, threads * (1 + AHEAD_OF_EACH), workers);
    } finally {
      workers.shutdownNow();
    }
  }

  /** Something that is being made. */
  interface Begun<R> {
    /** What was made, once it is; throws what the work threw. */
    R result() throws IOException;
  }

  /** Begins to make something of an item while the caller goes on with what is next. */
  static <T, R> Begun<R> begin(T item, Work<T, R> work) {
    var task = new FutureTask<>(() -> work.of(item));
    helper(task).start();
    return () -> result(task);
  }

  private static <T, R> void each(
      List<T> items, Work<T, R> work, Handover<R> handover, int most, ExecutorService workers)
      throws IOException {
    var ahead = new ArrayDeque<Future<R>>();
    for (var item : items) {
      if (ahead.size() == most) {
        handover.take(result(ahead.remove()));
      }
      ahead.add(workers.submit(() -> work.of(item)));
    }
    while (!ahead.isEmpty()) {
      handover.take(result(ahead.remove()));
    }
  }

  private static <R> R result(Future<R> future) throws IOException {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting for pages", e);
    } catch (ExecutionException e) {
      throw rethrown(e.getCause());
    }
  }

  private static IOException rethrown(Throwable cause) {
    if (cause instanceof RuntimeException mistake) {
      throw mistake;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    return (IOException) cause;
  }

  private static Thread helper(Runnable work) {
    var thread = new Thread(work, "pages");
    thread.setDaemon(true);
    return thread;
  }
}
