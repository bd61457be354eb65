package gambrel.cli;

import gambrel.run.Stage;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;

/** Counts what is done of a stage, on any thread, and tells one thread how far it is. */
final class StageCount implements LongConsumer {
  private final LongSupplier nanos;
  private final Stage stage;
  private final long total;
  private final long began;
  private final AtomicLong done = new AtomicLong();
  private volatile long last;

  /** From the middle of the stage's time until now: what was slow at first is forgotten. */
  private final Deque<Mark> marks = new ArrayDeque<>();

  private record Mark(long at, long done) {}

  StageCount(Stage stage, long total, LongSupplier nanos) {
    this.nanos = nanos;
    this.stage = stage;
    this.total = total;
    this.began = nanos.getAsLong();
    this.last = began;
    marks.add(new Mark(began, 0));
  }

  @Override
  public void accept(long part) {
    done.addAndGet(part);
    last = nanos.getAsLong();
  }

  /** How far it is; asked by one thread alone. */
  Reached reached() {
    var now = new Mark(last, done.get());
    var first = since(began + (now.at() - began) / 2);
    if (now.at() > marks.getLast().at()) {
      marks.add(now);
    }
    return new Reached(
        stage,
        now.done(),
        total,
        now.done() - first.done(),
        Duration.ofNanos(now.at() - first.at()),
        Duration.ofNanos(nanos.getAsLong() - now.at()));
  }

  /** The last mark up to a moment; those before it are let go. */
  private Mark since(long moment) {
    var first = marks.remove();
    while (!marks.isEmpty() && marks.peek().at() <= moment) {
      first = marks.remove();
    }
    marks.addFirst(first);
    return first;
  }
}
