package gambrel.cli;

import gambrel.trade.reckoning.Progress;
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
 * One line on a terminal that says which stage a night is in and how much of it is done. It is
 * drawn over itself and cleared in the end. The work never waits for a drawing, so that a stopped
 * terminal does not stop a night.
 */
final class ProgressLine implements Progress, AutoCloseable {
  /** No line is drawn for work that is over sooner. */
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  private static final Duration PACE = Duration.ofMillis(500);

  private final PrintWriter to;
  private final Terminal terminal;
  private final ScheduledExecutorService timer =
      Executors.newSingleThreadScheduledExecutor(ProgressLine::helper);
  private final Thread atExit = new Thread(this::clearAtExit);
  private volatile Count count;

  /** Null until there is something to draw. */
  private OptionalInt columns;

  private String shown = "";
  private boolean closed;

  /** How much of a stage is done; counted on any thread. */
  private record Count(Stage stage, long total, AtomicLong done) {}

  /** A line that is drawn when it is asked to. */
  ProgressLine(PrintWriter to, Terminal terminal) {
    this.to = to;
    this.terminal = terminal;
  }

  /** A line that draws itself, if there is a terminal, until it is closed. */
  static ProgressLine begin(PrintWriter to, Terminal terminal) {
    var line = new ProgressLine(to, terminal);
    if (terminal != Terminal.NONE) {
      var unused =
          line.timer.scheduleAtFixedRate(
              line::draw, PATIENCE.toMillis(), PACE.toMillis(), TimeUnit.MILLISECONDS);
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

  /** Draws the line as it is now; by one thread at a time. */
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

  /** Leaves the terminal as if the line had never been. */
  @Override
  public void close() {
    clear();
    timer.shutdownNow();
    try {
      Runtime.getRuntime().removeShutdownHook(atExit);
    } catch (IllegalStateException e) {
      // The process ends already, and what was to be done then is done.
      return;
    }
  }

  /** A stopped terminal must not keep the process from ending. */
  private void clearAtExit() {
    try {
      timer.submit(this::clear).get(1, TimeUnit.SECONDS);
    } catch (InterruptedException
        | ExecutionException
        | TimeoutException
        | RejectedExecutionException e) {
      // Closed just now, or stopped: either way there is no more to do.
      return;
    }
  }
}
