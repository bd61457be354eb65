package gambrel.files.csv;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;

/**
 * Works on all processors and hands the results over in the order of the items, so that no result
 * depends on the speed of a thread.
 */
public final class OrderedParallel {
  private static final int PROCESSORS = Runtime.getRuntime().availableProcessors();

  /** So many results may wait in memory while one is taken. */
  private static final int MOST_AHEAD = 3 * PROCESSORS;

  private OrderedParallel() {}

  /** The work on an item, on any thread. */
  public interface Work<T, R> {
    R of(T item) throws IOException;
  }

  /** Takes a result, on the caller's thread. */
  public interface Handover<R> {
    void take(R made) throws IOException;
  }

  /** Does the work on each item; throws the exception of the first item in order that fails. */
  public static <T, R> void each(List<T> items, Work<T, R> work, Handover<R> handover)
      throws IOException {
    var workers = Executors.newFixedThreadPool(PROCESSORS, OrderedParallel::worker);
    try {
      var ahead = new ArrayDeque<Future<R>>();
      for (var item : items) {
        if (ahead.size() == MOST_AHEAD) {
          handover.take(result(ahead.remove()));
        }
        ahead.add(workers.submit(() -> work.of(item)));
      }
      while (!ahead.isEmpty()) {
        handover.take(result(ahead.remove()));
      }
    } finally {
      workers.shutdownNow();
    }
  }

  /** Begins some work on another thread. */
  public static <R> Future<R> begin(Callable<R> work) {
    var task = new FutureTask<>(work);
    worker(task).start();
    return task;
  }

  /** Waits for a result; throws the exception of the work. */
  public static <R> R result(Future<R> future) throws IOException {
    try {
      ForkJoinPool.managedBlock(new Waiting(future));
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting for a worker", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException mistake) {
        throw mistake;
      }
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw (IOException) e.getCause();
    }
  }

  /**
   * A thread that waits. Java puts another in the place of one that works on parallel streams, for
   * the work that is waited for may need it.
   */
  private record Waiting(Future<?> future) implements ForkJoinPool.ManagedBlocker {
    @Override
    public boolean block() throws InterruptedException {
      try {
        future.get();
      } catch (ExecutionException e) {
        // It is thrown where the result is taken.
      }
      return true;
    }

    @Override
    public boolean isReleasable() {
      return future.isDone();
    }
  }

  private static Thread worker(Runnable work) {
    var thread = new Thread(work, "worker");
    thread.setDaemon(true);
    return thread;
  }
}
