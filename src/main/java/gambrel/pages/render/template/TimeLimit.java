package gambrel.pages.render.template;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Makes a page in a thread of its own, so that one that never ends costs a limited time and not the
 * night.
 */
public final class TimeLimit {

  private final Duration limit;

  public TimeLimit(Duration limit) {
    this.limit = limit;
  }

  /**
   * The work's result.
   *
   * @throws TemplateProblem if it takes longer than the limit, or more memory or depth than there
   *     is
   */
  public <T> T within(String template, Callable<T> work) {
    var task = new FutureTask<>(work);
    var thread = new Thread(task, "page " + template);
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      task.cancel(true);
      var what = "the page was not ready after " + limit.toSeconds() + " seconds";
      throw TemplateProblem.of(template, what, e);
    } catch (InterruptedException e) {
      task.cancel(true);
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while making a page", e);
    } catch (ExecutionException e) {
      throw failure(template, e.getCause());
    }
  }

  private static RuntimeException failure(String template, Throwable cause) {
    if (cause instanceof TemplateProblem problem) {
      return problem;
    }
    if (cause instanceof StackOverflowError) {
      return TemplateProblem.of(template, "the page is nested too deep, or calls itself", cause);
    }
    if (cause instanceof OutOfMemoryError) {
      return TemplateProblem.of(template, "the page needs more memory than there is", cause);
    }
    return TemplateProblem.of(template, "the page cannot be laid out: " + cause, cause);
  }
}
