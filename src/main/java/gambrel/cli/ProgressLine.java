package gambrel.cli;

import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Progress.Stage;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.OptionalInt;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongConsumer;

/**
 * One line on a terminal with the stage of a night and how much of the stage is done. It is drawn
 * over itself and cleared at the end. The work never waits for the terminal, so that a stopped
 * terminal does not stop a night.
 */
final class ProgressLine implements Progress, AutoCloseable {
  /** Work that takes less time has no line. */
  private static final Duration FIRST_DRAWING = Duration.ofSeconds(2);

  private static final Duration PERIOD = Duration.ofMillis(500);

  private final PrintWriter to;
  private final Terminal terminal;
  private final ScheduledExecutorService timer =
      Executors.newSingleThreadScheduledExecutor(ProgressLine::helper);
  private final Thread atExit = new Thread(this::clearAtExit);
  private volatile Count count;

  /** The width of the terminal; null until the first drawing. */
  private OptionalInt columns;

  private String shown = "";
  private boolean closed;

  /** How much of a stage is done; several threads count. */
  private record Count(Stage stage, long total, AtomicLong done) {}

  /** A line that is drawn by {@link #draw} only. */
  ProgressLine(PrintWriter to, Terminal terminal) {
    this.to = to;
    this.terminal = terminal;
  }

  /** A line that is drawn twice a second until it is closed; no line if there is no terminal. */
  static ProgressLine begin(PrintWriter to, Terminal terminal) {
    var line = new ProgressLine(to, terminal);
    if (terminal != Terminal.NONE) {
      var unused =
          line.timer.scheduleAtFixedRate(
              line::draw, FIRST_DRAWING.toMillis(), PERIOD.toMillis(), TimeUnit.MILLISECONDS);
      Runtime.getRuntime().addShutdownHook(line.atExit);
    }
    return line;
  }

  private static Thread helper(Runnable work) {
    var thread = new Thread(work, "progress");
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public LongConsumer begin(Stage stage, long total) {
    var begun = new Count(stage, total, new AtomicLong());
    count = begun;
    return begun.done()::addAndGet;
  }

  /** Draws the line as it is now; called by one thread only. */
  void draw() {
    var now = count;
    if (now == null) {
      return;
    }
    if (columns == null) {
      columns = terminal.columns();
    }
    if (columns.isPresent()) {
      show(ProgressText.of(now.stage(), now.done().get(), now.total(), columns.getAsInt()));
    }
  }

  private synchronized void show(String text) {
    if (!closed && !text.equals(shown)) {
      to.print('\r' + text + " ".repeat(Math.max(0, shown.length() - text.length())));
      to.flush();
      shown = text;
    }
  }

  private synchronized void clear() {
    closed = true;
    if (!shown.isEmpty()) {
      to.print('\r' + " ".repeat(shown.length()) + '\r');
      to.flush();
      shown = "";
    }
  }

  /** Clears the line and ends its thread. */
  @Override
  public void close() {
    clear();
    timer.shutdownNow();
    try {
      Runtime.getRuntime().removeShutdownHook(atExit);
    } catch (IllegalStateException e) {
      // The process is ending, and the hook is running.
      return;
    }
  }

  /** Clears the line, but does not wait longer than a second for a stopped terminal. */
  private void clearAtExit() {
    try {
      timer.submit(this::clear).get(1, TimeUnit.SECONDS);
    } catch (InterruptedException
        | ExecutionException
        | TimeoutException
        | RejectedExecutionException e) {
      // The line was closed just now, or the terminal is stopped.
      return;
    }
  }
}
