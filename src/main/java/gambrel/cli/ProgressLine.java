package gambrel.cli;

import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.ProcessBuilder.Redirect;
import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import java.util.function.Supplier;

/**
 * One line on a terminal with the stage of a night and how much of the stage is done. It is drawn
 * over itself and cleared at the end. The work never waits for the terminal, so that a stopped
 * terminal does not stop a night.
 */
final class ProgressLine implements Progress, AutoCloseable {
  /** Work that takes less time has no line. */
  private static final long FIRST_DRAWING_MILLIS = 2000;

  private static final long PERIOD_MILLIS = 500;
  private static final int PERCENT = 100;

  private final PrintWriter to;
  private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor();
  private volatile Supplier<String> text = () -> "";
  private String shown = "";

  /** A line that is drawn by {@link #draw} only. */
  ProgressLine(PrintWriter to) {
    this.to = to;
  }

  /** A line that is drawn twice a second until it is closed, if {@code to} is a terminal. */
  static ProgressLine begin(PrintWriter to, BooleanSupplier isTerminal) {
    var line = new ProgressLine(to);
    var unused =
        line.timer.schedule(
            () -> line.keepDrawing(isTerminal), FIRST_DRAWING_MILLIS, TimeUnit.MILLISECONDS);
    return line;
  }

  private void keepDrawing(BooleanSupplier isTerminal) {
    if (isTerminal.getAsBoolean()) {
      var unused = timer.scheduleAtFixedRate(this::draw, 0, PERIOD_MILLIS, TimeUnit.MILLISECONDS);
    }
  }

  /**
   * Whether standard error is a terminal that can draw a line over itself. Java cannot tell, so the
   * system's shell is asked; false if there is none.
   */
  static boolean isStandardErrorATerminal() {
    var question = "[ -t 2 ] && [ \"${TERM:-dumb}\" != dumb ]";
    try {
      var shell = new ProcessBuilder("/bin/sh", "-c", question).redirectError(Redirect.INHERIT);
      return shell.start().waitFor() == 0;
    } catch (IOException | InterruptedException e) {
      return false;
    }
  }

  @Override
  public LongConsumer begin(Stage stage, long total) {
    var done = new AtomicLong();
    var name = stage.name().toLowerCase(Locale.ROOT);
    text = () -> total == 0 ? name : name + " " + PERCENT * done.get() / total + " %";
    return done::addAndGet;
  }

  /** Draws the line as it is now. */
  synchronized void draw() {
    if (!timer.isShutdown()) {
      show(text.get());
    }
  }

  private void show(String line) {
    if (!line.equals(shown)) {
      to.print('\r' + line + " ".repeat(Math.max(0, shown.length() - line.length())));
      to.print(line.isEmpty() ? "\r" : "");
      to.flush();
      shown = line;
    }
  }

  /** Clears the line and ends its thread. */
  @Override
  public synchronized void close() {
    timer.shutdownNow();
    show("");
  }
}
